import { expectation, scoreSweep, simulateSweep, type Verdict } from '@truesweep/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../counts.js';
import { kinds, sweepCase } from './sweepCase.js';
import { truthOf } from './sweepTruth.js';

const casesOfKind = 24 * soak;
const verdicts: readonly Verdict[] = ['pass', 'marginal', 'fail', 'inconclusive'];

/**
 * What must hold of every simulated sweep: a sound sensor never fails, and none with a visible dropout, its
 * depth 1.5 times the visible departure or more, passes.
 */
test(
  'no sound sweep fails, no visible dropout passes',
  () => {
    const table: Record<string, Record<Verdict, number>> = {};
    const wrong: string[] = [];
    for (const [at, kind] of kinds.entries()) {
      const row = { pass: 0, marginal: 0, fail: 0, inconclusive: 0 };
      table[kind] = row;
      for (const { plan, tolerances } of fc.sample(sweepCase(kind), {
        numRuns: casesOfKind,
        seed: 1000 + at,
      })) {
        const simulated = simulateSweep(plan);
        const truth = truthOf(plan, simulated);
        const score = scoreSweep(simulated.sweep, expectation(plan.circuit, tolerances));
        row[score.verdict]++;
        const sound = simulated.events.length === 0;
        if (sound && score.verdict === 'fail')
          wrong.push(`sound sweep failed: ${JSON.stringify(plan)}`);
        const visible = truth.visibility >= 1.5;
        if (visible && score.verdict === 'pass')
          wrong.push(`${kind} passed: ${JSON.stringify(plan)}`);
        if (!truth.fineEnough && score.verdict === 'pass')
          wrong.push(`too coarse, yet passed: ${JSON.stringify(plan)}`);
      }
    }
    const width = Math.max(...kinds.map((kind) => kind.length));
    const line = (name: string, cells: readonly unknown[]) =>
      name.padEnd(width) + cells.map((cell) => String(cell).padStart(14)).join('');
    console.log(
      [
        line('', verdicts),
        ...kinds.map((kind) =>
          line(
            kind,
            verdicts.map((verdict) => table[kind]![verdict]),
          ),
        ),
      ].join('\n'),
    );
    expect(wrong.slice(0, 3)).toEqual([]);
  },
  300_000 * soak,
);
