import { judgeTwoState, judgeWinding } from '@truesweep/core';
import { describe, expect, test } from 'vitest';
import { soak } from '../counts.js';
import type { Truth } from './kinds/truth.js';
import { twoStateCase } from './kinds/twoStateCase.js';
import { windingCase } from './kinds/windingCase.js';

type Verdict = 'pass' | 'marginal' | 'fail' | 'inconclusive';
type Judged = Truth & { readonly verdict: Verdict };

const cases = 1000 * soak;

/** Each kind with how a case of a seed is judged. */
const kinds: readonly (readonly [name: string, judge: (seed: number) => Judged])[] = [
  [
    'windings',
    (seed) => {
      const { limits, readings, ...truth } = windingCase(seed);
      return { ...truth, verdict: judgeWinding(limits, readings).verdict };
    },
  ],
  [
    'sensors of two states',
    (seed) => {
      const { sensor, readings, ...truth } = twoStateCase(seed);
      return { ...truth, verdict: judgeTwoState(sensor, readings).verdict };
    },
  ],
];

/** Asserts what holds of a rate and prints it with what is asked, %. */
function keepsWithin(
  title: string,
  all: readonly Judged[],
  wrong: Verdict,
  holds: number,
  goal: number,
): void {
  const count = all.filter(({ verdict }) => verdict === wrong).length;
  const percent = (100 * count) / all.length;
  console.log(
    `${title}: ${count} of ${all.length}, ${percent.toFixed(2)} % (holds: at most ${holds} %, goal: at most ${goal} %)`,
  );
  expect(all.length).toBeGreaterThan(200 * soak);
  expect(percent).toBeLessThanOrEqual(holds);
}

describe.each(kinds)('%s: what is simulated, judged', (name, judge) => {
  const judged = Array.from({ length: cases }, (_, i) => judge(i + 1));
  const of = (state: Truth['state']) => judged.filter((one) => one.state === state);

  test('sound called fail', () => {
    keepsWithin(`${name}, sound called fail`, of('sound'), 'fail', 0.1, 0.3);
  });

  test('visibly faulty called pass', () => {
    keepsWithin(`${name}, visibly faulty called pass`, of('visible'), 'pass', 0.05, 0.5);
  });

  test('adequate and inconclusive', () => {
    const adequate = judged.filter((one) => one.adequate);
    keepsWithin(`${name}, adequate and inconclusive`, adequate, 'inconclusive', 0.05, 5);
  });
});
