import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { randomNumbers } from '../statistics/randomNumbers.js';
import {
  chanceInPasses,
  chanceOfReading,
  type Readings,
  shortestShown,
} from './chanceOfReading.js';

/** Whether an event at a phase is shown: some run of readings overlaps it enough. */
function isShown(
  start: number,
  length: number,
  { interval, aperture, share, inARow = 1 }: Readings,
) {
  let run = 0;
  for (let k = Math.floor((start - aperture) / interval); k * interval <= start + length; k++) {
    const from = Math.max(start, k * interval);
    const to = Math.min(start + length, k * interval + aperture);
    const isMarked =
      aperture === 0
        ? k * interval >= start && k * interval < start + length
        : to > from && to - from >= share * aperture;
    run = isMarked ? run + 1 : 0;
    if (run >= inARow) return true;
  }
  return false;
}

describe('against events thrown at random phases', () => {
  const grid = [0, 0.1, 0.4].flatMap((aperture) =>
    [0, 0.3, 0.8].flatMap((dead) =>
      [0.05, 0.3, 0.9].flatMap((share) =>
        [1, 3].map((inARow) => ({ aperture, dead, share, inARow })),
      ),
    ),
  );
  const trials = 1_000_000;

  test.each(grid.filter(({ aperture, dead }) => aperture + dead > 0))(
    'aperture $aperture s, dead time $dead s, share $share, $inARow in a row',
    ({ aperture, dead, share, inARow }) => {
      const readings = { interval: aperture + dead, aperture, share, inARow };
      const random = randomNumbers(17);
      const lengths = [0.033, 0.15, 0.51, 1.13, 2.4];
      for (const length of lengths) {
        const chance = chanceOfReading(length, readings);
        let shown = 0;
        const each = Math.round((trials * soak) / lengths.length);
        for (let i = 0; i < each; i++) {
          if (isShown(random.uniform() * readings.interval, length, readings)) shown += 1;
        }
        const error = Math.sqrt((chance * (1 - chance)) / each);
        expect(Math.abs(shown / each - chance)).toBeLessThanOrEqual(4 * error + 1e-9);
      }
    },
  );
});

const settings = fc
  .record({
    aperture: fc.double({ min: 0, max: 1, noNaN: true }),
    dead: fc.double({ min: 1e-3, max: 1, noNaN: true }),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
    inARow: fc.integer({ min: 1, max: 5 }),
  })
  .map(({ dead, ...rest }): Readings => ({ ...rest, interval: rest.aperture + dead }));
const length = fc.double({ min: 0, max: 5, noNaN: true });

test('longer events and more passes are never less likely to be shown; faster sweeps never more', () => {
  fc.assert(
    fc.property(
      settings,
      length,
      length,
      fc.integer({ min: 1, max: 50 }),
      (readings, a, b, passes) => {
        const [short, long] = [
          chanceOfReading(Math.min(a, b), readings),
          chanceOfReading(Math.max(a, b), readings),
        ];
        expect(short).toBeLessThanOrEqual(long);
        expect(chanceInPasses(short, passes)).toBeLessThanOrEqual(
          chanceInPasses(short, passes + 1),
        );
        // A spot of a width is passed in the shorter time by the faster sweep.
        const width = Math.min(a, b);
        expect(chanceOfReading(width / 2, readings)).toBeLessThanOrEqual(
          chanceOfReading(width, readings),
        );
      },
    ),
    { numRuns: 500 * soak },
  );
});

test('the shortest that is shown is shown, and a shorter one is less likely to be', () => {
  fc.assert(
    fc.property(
      settings,
      fc.constantFrom(0.5, 0.95, 0.99),
      fc.integer({ min: 1, max: 20 }),
      (readings, wanted, passes) => {
        const shortest = shortestShown(readings, wanted, passes);
        const chance = (seconds: number) =>
          chanceInPasses(Math.min(1, chanceOfReading(seconds, readings)), passes);
        expect(chance(shortest * (1 + 1e-9) + 1e-12)).toBeGreaterThanOrEqual(wanted - 1e-6);
        if (shortest > 1e-3) expect(chance(shortest * 0.9)).toBeLessThanOrEqual(wanted + 1e-9);
      },
    ),
    { numRuns: 500 * soak },
  );
});

test.each([
  [{ interval: 0.1, aperture: 0.2, share: 0 }, 'impossible-setting', 'readings.aperture'],
  [{ interval: 0, aperture: 0, share: 0 }, 'zero', 'readings.interval'],
  [{ interval: 1, aperture: 0, share: 2 }, 'out-of-range', 'readings.share'],
  [{ interval: 1, aperture: 0, share: 0, inARow: 0 }, 'out-of-range', 'readings.inARow'],
])('refuses %o', (readings, code, path) => {
  expect(() => chanceOfReading(1, readings)).toThrow(expect.objectContaining({ code, path }));
});
