import { expect, test } from 'vitest';
import { soak } from '../counts.js';
import { judgeCase } from './judgeCase.js';
import { measure } from './measure.js';
import { print } from './print.js';
import { runCase } from './runCase.js';
import { saveWrongCases } from './saveWrongCases.js';

/** Seeds looked at while tuning, and seeds that never were. Even ones are sound, odd ones faulty. */
const seeds = { tuning: 1_000_000, 'held back': 5_000_000 };

/** Cases of each set, half of them sound; `CORPUS_CASES` runs so many of the tuning set alone. */
const wanted = Number(process.env.CORPUS_CASES ?? 0);
const cases = wanted || 400 * Math.min(soak, 5);

for (const [name, first] of Object.entries(seeds)) {
  test.skipIf(wanted > 0 && name !== 'tuning')(
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
