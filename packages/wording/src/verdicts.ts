import type { Verdict } from '@truesweep/core';

/**
 * The verdicts as headings.
 *
 * @example
 * verdictLabels.pass // => 'Pass'
 */
export const verdictLabels: Readonly<Record<Verdict, string>> = {
  pass: 'Pass',
  marginal: 'Marginal',
  fail: 'Fail',
  inconclusive: 'Inconclusive',
};

/**
 * What a verdict says about the sensor as it was hooked up and recorded.
 *
 * @example
 * verdictMeanings.pass // => 'Nothing in this recording speaks against the sensor.'
 */
export const verdictMeanings: Readonly<Record<Verdict, string>> = {
  pass: 'Nothing in this recording speaks against the sensor.',
  marginal: 'Something shows that one recording cannot settle. Record again before you decide.',
  fail: 'Do not put the sensor back as it is; the cause says what to mend.',
  inconclusive: 'This recording cannot tell a good sensor from a bad one. It is not a pass.',
};
