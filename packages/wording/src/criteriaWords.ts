import type { LoosenedCriterion } from '@truesweep/core';
import { texts } from './rules.js';
import { say } from './say.js';

/**
 * The limits that may be loosened, as they are called in a sentence.
 */
export const criterionLabels: Readonly<Record<LoosenedCriterion['name'], string>> = {
  falseDepartures: 'chance of a false departure by noise',
  visibleSteps: 'visible departure in steps of the recorder',
  visibleSpan: 'visible departure as a part of the span',
  visibleRipple: 'visible departure in amplitudes of mains ripple',
  dropout: 'shortest dropout that must show',
  samplesInDropout: 'samples in it',
  looks: 'clean looks at each place',
  coarsestVisible: 'coarsest visible departure',
  supplyStray: 'stray of the supply',
  closedNormal: 'normal scatter of the closed reading',
  closedMarginal: 'marginal scatter of the closed reading',
  returns: 'returns to closed',
};

/**
 * Their units; a count has none.
 */
export const criterionUnits: Readonly<Record<LoosenedCriterion['name'], '%' | 's' | undefined>> = {
  falseDepartures: '%',
  visibleSteps: undefined,
  visibleSpan: '%',
  visibleRipple: undefined,
  dropout: 's',
  samplesInDropout: undefined,
  looks: undefined,
  coarsestVisible: '%',
  supplyStray: '%',
  closedNormal: '%',
  closedMarginal: '%',
  returns: undefined,
};

/**
 * Said beside a verdict by limits that are looser than usual.
 *
 * @example
 * loosenedSentence(['returns to closed 2 (usually 3)']) // => 'Judged by loosened limits: returns to closed 2 (usually 3).'
 */
export function loosenedSentence(limits: readonly string[]): string {
  texts(limits, 'limits');
  return say`Judged by loosened limits: ${limits.join('; ')}.`;
}
