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

/** A rate with what is asked of it, printed. */
function rate(name: string, all: readonly Judged[], isWrong: (one: Judged) => boolean): number {
  const wrong = all.filter(isWrong).length;
  console.log(`${name}: ${wrong} of ${all.length} (${((100 * wrong) / all.length).toFixed(2)} %)`);
  expect(all.length).toBeGreaterThan(200 * soak);
  return wrong / all.length;
}

describe.each(kinds)('%s: what is simulated, judged', (name, judge) => {
  const judged = Array.from({ length: cases }, (_, i) => judge(i + 1));
  const of = (state: Truth['state']) => judged.filter((one) => one.state === state);

  test('sound called fail: at most 0.3 %', () => {
    const wrong = rate(
      `${name}, sound called fail`,
      of('sound'),
      ({ verdict }) => verdict === 'fail',
    );
    expect(wrong).toBeLessThanOrEqual(0.003);
  });

  test('visibly faulty called pass: at most 0.5 %', () => {
    const wrong = rate(
      `${name}, visibly faulty called pass`,
      of('visible'),
      ({ verdict }) => verdict === 'pass',
    );
    expect(wrong).toBeLessThanOrEqual(0.005);
  });

  test('adequate and inconclusive: at most 5 %', () => {
    const adequate = judged.filter((one) => one.adequate);
    const wrong = rate(
      `${name}, adequate and inconclusive`,
      adequate,
      ({ verdict }) => verdict === 'inconclusive',
    );
    expect(wrong).toBeLessThanOrEqual(0.05);
  });
});
