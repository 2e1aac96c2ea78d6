import type { CannotShow, SpotOutcome } from '@truesweep/core';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * Headings and short words of a comparison of two sweeps.
 *
 * @example
 * comparisonWords.depth // => 'depth'
 */
export const comparisonWords = {
  verdict: 'Verdict',
  outsideSpots: 'Findings at no repeated place',
  noSpots: 'Neither recording shows a place that departs.',
  depth: 'depth',
} as const satisfies Record<string, string>;

/**
 * What became of a place between two sweeps.
 *
 * @example
 * spotOutcomeLabels.vanished // => 'vanished'
 */
export const spotOutcomeLabels: Readonly<Record<SpotOutcome, string>> = {
  appeared: 'appeared',
  vanished: 'vanished',
  grew: 'grew',
  shrank: 'shrank',
  stayed: 'stayed',
  'could-not-show': 'is in one recording only, and the other could not have shown it',
};

/**
 * Why a recording could not have shown a place.
 *
 * @example
 * cannotShowSentences['too-short'].startsWith('It is shorter') // => true
 */
export const cannotShowSentences: Readonly<Record<CannotShow, string>> = {
  blind: 'There the load hides a lifted wiper.',
  'not-passed': 'No pass went over it.',
  'too-shallow': 'It is shallower than what that recording makes visible.',
  'too-short': 'It is shorter than the time between the samples of that recording.',
};

/**
 * The doubt about what appeared or vanished.
 *
 * @example
 * missedByChanceSentence('3 %') // => 'The probability that the other recording missed it by chance is 3 %.'
 */
export function missedByChanceSentence(chance: string): string {
  return say`The probability that the other recording missed it by chance is ${chance}.`;
}

/**
 * How a reading at a stop changed; every quantity written with its unit.
 *
 * @example
 * const change = { label: 'Closed reading', before: '410 mV', after: '415 mV', change: '5 mV', uncertainty: '14 mV' };
 * endChangeSentence({ ...change, significant: false }) // => 'Closed reading: 410 mV, then 415 mV; the change of 5 mV is within its uncertainty of ± 14 mV.'
 */
export function endChangeSentence(change: {
  readonly label: string;
  readonly before: string;
  readonly after: string;
  readonly change: string;
  readonly uncertainty: string;
  readonly significant: boolean;
}): string {
  return whole(change, 'change', () => {
    const { label, before, after, uncertainty, significant } = change;
    const beyond = significant ? 'more than' : 'within';
    return say`${label}: ${before}, then ${after}; the change of ${change.change} is ${beyond} its uncertainty of ± ${uncertainty}.`;
  });
}
