import { useMemo } from 'preact/hooks';

/** A text that can be kept as a file. */
export function KeptFile(props: {
  readonly name: string;
  readonly type: string;
  readonly text: string;
  readonly children: string;
}) {
  const { name, type, text, children } = props;
  // No blob: browsers look ahead at the addresses of links, and the page's policy lets nothing be fetched from one.
  const url = useMemo(() => `data:${type};charset=utf-8,${encodeURIComponent(text)}`, [type, text]);
  return (
    <a class="button" download={name} href={url}>
      {children}
    </a>
  );
}
