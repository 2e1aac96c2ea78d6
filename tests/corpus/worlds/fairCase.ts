import {
  type Cause,
  type Expectation,
  expectation,
  type Recorder,
  type Sweep,
  type Verdict,
} from '@truesweep/core';
import { drawCase } from '../cases/drawCase.js';
import { playHabit } from '../habits/playHabit.js';
import { playPlate } from '../plate/playPlate.js';
import { causes } from '../second/faults.js';
import { playSecond } from '../second/playSecond.js';
import { simulate } from '../simulator/simulate.js';
import { truthOf } from '../truth.js';

/** A recording of any of the modelled worlds, with what may fairly be said of it. */
export interface FairCase {
  readonly sweep: Sweep;
  readonly expected: Expectation;
  readonly told: Recorder;
  readonly verdicts: readonly Verdict[];
  /** Absent where the cause can't be decided. */
  readonly causes?: readonly Cause[];
}

export const fairWorlds: Readonly<
  Record<'plate' | 'habits' | 'first' | 'second', (seed: number) => FairCase>
> = { plate: playPlate, habits: playHabit, first: playFirst, second: playFairSecond };

function playFirst(seed: number): FairCase {
  const plan = drawCase(seed);
  const simulated = simulate(plan);
  const { time, signal } = simulated.recording;
  return {
    sweep: { time, signal },
    expected: expectation(plan.nominal, plan.tolerances),
    told: plan.told,
    ...truthOf(plan, simulated),
  };
}

/** From this on the second simulator's recordings are so coarse that nobody need pass them, as a part of the span. */
const coarse = 0.045;

function playFairSecond(seed: number): FairCase {
  const { fault, visible, ...played } = playSecond(seed);
  if (fault)
    return { ...played, verdicts: ['fail', 'marginal', 'inconclusive'], causes: [causes[fault]] };
  return { ...played, verdicts: visible > coarse ? ['pass', 'inconclusive'] : ['pass'] };
}
