import type { ComponentChildren } from 'preact';

/** Words in a drawing, in the ink of the page. */
export function Words(props: {
  readonly x: number;
  readonly y: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  readonly children: ComponentChildren;
}) {
  const { x, y, anchor = 'start', bold = false, children } = props;
  return (
    <text
      x={x}
      y={y}
      text-anchor={anchor}
      fill="currentColor"
      stroke="none"
      {...(bold && { 'font-weight': 'bold' })}
    >
      {children}
    </text>
  );
}
