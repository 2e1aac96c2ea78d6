import type { Finding } from '@truesweep/core';

const shapes: Readonly<Record<Finding['kind'], string>> = {
  dropout: 'M-5,-4h10l-5,9z',
  spike: 'M-5,4h10l-5,-9z',
  step: 'M-5,4h5v-8h5',
  'dead-spot': 'M-5,-4h10v8h-10z',
  rough: 'M-6,0l3,-4l3,8l3,-8l3,4',
};

/** The sign of a kind of finding: each has its own shape, so that none needs a colour. */
export function FindingSymbol(props: {
  readonly kind: Finding['kind'];
  readonly x: number;
  readonly y: number;
}) {
  const { kind, x, y } = props;
  const isOpen = kind === 'step' || kind === 'rough';
  return (
    <path
      class={`finding ${kind}`}
      transform={`translate(${x},${y})`}
      d={shapes[kind]}
      stroke-width="1.6"
      {...(!isOpen && { fill: 'currentColor', 'fill-opacity': '0.6' })}
    />
  );
}
