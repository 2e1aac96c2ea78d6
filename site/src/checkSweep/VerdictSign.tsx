import type { Verdict } from '@truesweep/core';

/** The outline of each verdict's sign, and what stands in it: told apart without colour. */
const signs: Readonly<Record<Verdict, readonly [outline: string, mark: string]>> = {
  pass: ['M20,3a17,17 0 1 0 0.01,0z', 'M12,21l6,6l11,-13'],
  marginal: ['M20,3L38,35H2z', 'M20,14v11M20,29.5v1'],
  fail: ['M13,3H27L37,13V27L27,37H13L3,27V13z', 'M13,13l14,14M27,13l-14,14'],
  inconclusive: ['M20,2L38,20L20,38L2,20z', 'M15,16c0,-7 10,-7 10,0c0,4 -5,4 -5,8M20,28.5v1'],
};

/** A verdict's sign: its shape and its mark say it, in its colour. */
export function VerdictSign({ verdict }: { readonly verdict: Verdict }) {
  const [outline, mark] = signs[verdict];
  return (
    <svg class="sign" viewBox="0 0 40 40" width="40" height="40" aria-hidden="true">
      <path d={outline} class="outline" />
      <path d={mark} class="mark" />
    </svg>
  );
}
