import type { UncertainInput } from '../statistics/combineUncertainties.js';
import type { ReadingLimits } from './checkLimits.js';
import { compareReading } from './judgeReading.js';

/** Limits as a check tells them. */
export function toldLimits({ low, high }: ReadingLimits) {
  return {
    ...(low !== undefined && { lowLimit: low }),
    ...(high !== undefined && { highLimit: high }),
  };
}

/** What a check tells of a value beside its limits; neither is checked. */
export function compareWithin<Source extends string>(
  measured: number,
  limits: ReadingLimits,
  inputs: readonly UncertainInput<Source>[],
) {
  return {
    measured,
    ...toldLimits(limits),
    ...compareReading<Source>({ measured, ...limits, inputs }),
  };
}
