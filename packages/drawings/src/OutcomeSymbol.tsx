import type { CheckOutcome } from '@truesweep/core';

const shapes: Readonly<Record<CheckOutcome, string>> = {
  conforms: 'M-4.5,0a4.5,4.5 0 1 0 9,0a4.5,4.5 0 1 0 -9,0z',
  marginal: 'M0,-6l6,6l-6,6l-6,-6z',
  fails: 'M-5,-5l10,10m0,-10l-10,10',
  'cannot-tell': 'M-4.5,0a4.5,4.5 0 1 0 9,0a4.5,4.5 0 1 0 -9,0z',
  'not-judged': 'M-5,0h10',
};

/** The sign of what came of a reading: each outcome has its own shape, so that none needs a colour. */
export function OutcomeSymbol(props: {
  readonly outcome: CheckOutcome;
  readonly x: number;
  readonly y: number;
}) {
  const { outcome, x, y } = props;
  return (
    <path
      class={`outcome ${outcome}`}
      transform={`translate(${x},${y})`}
      d={shapes[outcome]}
      stroke-width={outcome === 'fails' ? 2.4 : 1.6}
      {...(outcome === 'conforms' && { fill: 'currentColor' })}
    />
  );
}
