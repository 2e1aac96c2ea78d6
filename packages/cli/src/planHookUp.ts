import {
  type Amps,
  type CurrentRating,
  chooseLimiter,
  InputError,
  type LimiterChoice,
  type LimiterWish,
  type NoLimiter,
  type PowerRating,
  parseQuantity,
  type Ratings,
  type Watts,
  type WrongConnection,
  wrongConnections,
} from '@truesweep/core';
import { type Job, jobCircuit } from '@truesweep/jobs';
import { ratingWithoutUnitSentence } from '@truesweep/wording';

/** A planned hook-up: the limiter's choice and what wrong connections do with the job's own limiter. */
export interface HookUpPlan {
  readonly title: string;
  readonly limiter: number;
  readonly choice: LimiterChoice | NoLimiter;
  readonly connections: readonly WrongConnection[];
}

/** Ratings and wishes as they were typed. */
export interface PlanWishes {
  readonly wiperCurrent?: string;
  readonly trackPower?: string;
  readonly sourceCurrent?: string;
  readonly span?: string;
  readonly otherSource?: string;
}

/**
 * Plans the hook-up of a job.
 *
 * @throws InputError for a wish that is no such quantity.
 */
export function planHookUp(job: Job, wishes: PlanWishes): HookUpPlan {
  const ratings = ratingsOf(wishes);
  const wish = wishOf(wishes);
  const circuit = jobCircuit(job);
  const choice = chooseLimiter(circuit, ratings, wish);
  const connections = wrongConnections(circuit, ratings, wish.otherSource);
  return { title: job.title, limiter: circuit.limiter, choice, connections };
}

/** What the parts bear, as it was typed. */
export function ratingsOf({ wiperCurrent, trackPower, sourceCurrent }: PlanWishes): Ratings {
  return {
    ...(wiperCurrent && { wiper: current(rating(wiperCurrent, 'A', '--wiper-current')) }),
    ...(trackPower && { track: power(rating(trackPower, 'W', '--track-power')) }),
    ...(sourceCurrent && {
      source: current(rating(sourceCurrent, 'A', '--source-current')),
    }),
  };
}

/** A rating as it was typed. Without a unit nobody knows whether amperes or milliamperes are meant, and the part would burn by the difference. */
function rating(text: string, unit: 'A' | 'W', option: string): number {
  if (Number.isFinite(Number(text.replace(',', '.'))) && text.trim() !== '') {
    throw new InputError('no-unit', option, ratingWithoutUnitSentence(option, text, unit));
  }
  return parseQuantity(text, unit, option);
}

/** What the limiting resistor shall leave, as it was typed. */
export function wishOf({ span, otherSource }: PlanWishes): LimiterWish {
  return {
    ...(span && { span: parseQuantity(span, '%', '--span') }),
    ...(otherSource && { otherSource: parseQuantity(otherSource, 'V', '--other-source') }),
  };
}

/** A continuous rating alone is kept by every mistake too: what the part stands for a moment isn't known. */
function current(amps: Amps): CurrentRating {
  return { amps, shortTerm: amps };
}

function power(watts: Watts): PowerRating {
  return { watts, shortTerm: watts };
}
