import { expect, test } from 'vitest';
import { soak } from '../counts.js';
import { judgeCase } from './judgeCase.js';
import { measure } from './measure.js';
import { print } from './print.js';
import { replay, runCase } from './runCase.js';
import { saveWrongCases } from './saveWrongCases.js';

/** Seeds looked at while tuning, and seeds that never were. Even ones are sound, odd ones faulty. */
const seeds = { tuning: 1_000_000, 'held back': 5_000_000 };

/** Cases of each set, half of them sound; `CORPUS_CASES` runs so many of the tuning set alone. */
const wanted = Number(process.env.CORPUS_CASES ?? 0);
const cases = wanted || 400 * Math.min(soak, 5);

/** Prints one case in full, for a look at what went wrong: `CORPUS_SEED=1000013`. */
const single = Number(process.env.CORPUS_SEED ?? 0);

test.skipIf(single === 0)('one case, played again', () => {
  const { plan, score, sweep, truth } = replay(single);
  console.log(JSON.stringify({ plan, truth, score }, undefined, 1));
  expect(sweep.time.length).toBe(score.quality.samples);
});

for (const [name, first] of Object.entries(seeds)) {
  test.skipIf(single > 0 || (wanted > 0 && name !== 'tuning'))(
    `the ${name} corpus is judged as it should be`,
    () => {
      const judged = Array.from({ length: cases }, (_, i) => judgeCase(runCase(first + i)));
      const measured = measure(judged);
      console.log(print(name, measured));
      if (name === 'tuning') console.log(`wrong cases: ${saveWrongCases(judged)}`);
      expect(measured.inadequatePassed.hits).toBe(0);
    },
    cases * 1000,
  );
}
