import { expect, test } from 'vitest';
import { soak } from '../counts.js';
import { floors, holds } from './floors.js';
import { judgeCase } from './judgeCase.js';
import { measure } from './measure.js';
import { print } from './print.js';
import { replay, runCase } from './runCase.js';
import { saveWrongCases } from './saveWrongCases.js';

/** Seeds looked at while tuning, and seeds that never were. Even ones are sound, odd ones faulty. */
const sets = [
  { name: 'tuning', firstSeed: 1_000_000, casesInTest: 80 },
  { name: 'held-back', firstSeed: 5_000_000, casesInTest: 400 },
] as const;

/** The whole of each set, which a soak runs: 1,000 sound and 1,000 faulty. */
const whole = 2000;

/** `CORPUS_CASES=400` runs so many of the tuning set alone, `CORPUS_SEED=1000013` prints a single case in full. */
const tried = Number(process.env.CORPUS_CASES ?? 0);
const single = Number(process.env.CORPUS_SEED ?? 0);

test.skipIf(single === 0)('one case, played again', () => {
  const { sweep, ...result } = replay(single);
  const { wrong, events, findings } = judgeCase(result);
  console.log(JSON.stringify({ ...result, wrong, events, findings }, undefined, 1));
  expect(sweep.time.length).toBe(result.score.quality.samples);
});

for (const { name, firstSeed, casesInTest } of sets) {
  const cases = tried || Math.min(whole, casesInTest * soak);
  test.skipIf(single > 0 || (tried > 0 && name !== 'tuning'))(
    `the ${name} corpus is judged as it should be`,
    () => {
      const judged = Array.from({ length: cases }, (_, i) => judgeCase(runCase(firstSeed + i)));
      const measured = measure(judged);
      console.log(print(name, measured));
      if (name === 'tuning') console.log(`wrong cases: ${saveWrongCases(judged)}`);
      expect(measured.inadequatePassed.hits).toBe(0);
      expect(floors(measured, name).filter((floor) => !holds(floor))).toEqual([]);
    },
    cases * 3000,
  );
}
