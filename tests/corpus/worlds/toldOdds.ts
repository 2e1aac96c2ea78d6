import { type Cause, type Fraction, InputError, type Score } from '@truesweep/core';
import type { FairCase } from './fairCase.js';

/** Odds that were told of something, and whether it was so. */
export interface Told {
  readonly odds: Fraction;
  readonly isSo: boolean;
}

/** What a score told odds of. */
export interface ToldOdds {
  readonly verdict?: Told;
  readonly cause?: Told;
}

/** The causes of departures: others follow from a check, without odds. */
const weighed: readonly Cause[] = ['track', 'connection', 'interference'];

/** The odds that a score told, beside the truth; of a cause only where that can be decided. */
export function toldOdds(
  { verdicts, causes }: Pick<FairCase, 'verdicts' | 'causes'>,
  said: Score | InputError,
): ToldOdds {
  if (said instanceof InputError) return {};
  const { verdict, confidence } = said;
  const [leading] = said.causes;
  return {
    ...(confidence !== undefined && {
      verdict: { odds: confidence, isSo: verdicts.includes(verdict) },
    }),
    ...(causes &&
      leading &&
      weighed.includes(leading.cause) && {
        cause: { odds: leading.weight, isSo: causes.includes(leading.cause) },
      }),
  };
}
