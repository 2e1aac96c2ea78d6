import type { ComponentChildren } from 'preact';

/** A picture with a name and a description for those who don't see it; as wide as its place allows. */
export function Figure(props: {
  readonly id: string;
  readonly kind: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly children: ComponentChildren;
}) {
  const { id, kind, title, description, width, height, children } = props;
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      id={id}
      class={`drawing ${kind}`}
      role="img"
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-description`}
      viewBox={`0 0 ${width} ${height}`}
      width="100%"
      fill="none"
      stroke="currentColor"
      stroke-width="1.4"
      font-size="13"
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-description`}>{description}</desc>
      {children}
    </svg>
  );
}
