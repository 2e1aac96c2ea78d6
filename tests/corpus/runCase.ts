import { expectation, type Score, type Sweep, scoreSweep } from '@truesweep/core';
import { drawCase } from './cases/drawCase.js';
import type { CorpusPlan } from './simulator/plan.js';
import { simulate } from './simulator/simulate.js';
import { type Truth, truthOf } from './truth.js';

export interface CaseResult {
  readonly plan: CorpusPlan;
  readonly truth: Truth;
  readonly score: Score;
}

/** Draws, plays and scores the case of a seed. */
export function runCase(seed: number): CaseResult {
  const { plan, truth, score } = replay(seed);
  return { plan, truth, score };
}

/** As {@link runCase}, with the sweep itself. */
export function replay(seed: number): CaseResult & { readonly sweep: Sweep } {
  const plan = drawCase(seed);
  const simulated = simulate(plan);
  const { time, signal } = simulated.recording;
  const sweep = { time, signal };
  const score = scoreSweep(sweep, expectation(plan.nominal, plan.tolerances), plan.told);
  return { plan, truth: truthOf(plan, simulated), score, sweep };
}
