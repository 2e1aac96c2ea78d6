import type { Verdict } from '@truesweep/core';

/** The program itself failed. */
export const failedCode = 1;

/** An input was wrong. */
export const badInputCode = 2;

/** What was to be printed could not be written: no verdict's code, so that no script takes it for one. */
export const brokenOutputCode = 3;

/** Somebody ended it before it was done (128 and the number of the interrupt, as shells tell it). */
export const stoppedCode = 130;

/** What `--exit-by-verdict` leaves with, the best verdict first. */
const verdictCodes: readonly (readonly [Verdict, number])[] = [
  ['pass', 0],
  ['marginal', 10],
  ['inconclusive', 12],
  ['fail', 11],
];

/** The exit code of the worst of several verdicts: fail, then inconclusive, then marginal, then pass. */
export function exitCodeOf(verdicts: readonly Verdict[]): number {
  const [, code] = verdictCodes.findLast(([verdict]) => verdicts.includes(verdict)) ?? ['', 0];
  return code;
}
