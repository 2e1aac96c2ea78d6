import { expect, test } from 'vitest';
import { chanceAllMissed } from './chanceAllMissed.js';

test('one further pass follows the rule of succession', () => {
  for (let passes = 0; passes <= 6; passes++) {
    for (let seen = 0; seen <= passes; seen++) {
      expect(chanceAllMissed(seen, passes, 1)).toBeCloseTo(1 - (seen + 1) / (passes + 2), 14);
    }
  }
});

test('is the likelihood integrated over the uniform prior', () => {
  const steps = 20_000;
  const integral = (shown: number, missed: number) => {
    let sum = 0;
    for (let i = 0; i < steps; i++) {
      const chance = (i + 0.5) / steps;
      sum += chance ** shown * (1 - chance) ** missed;
    }
    return sum / steps;
  };
  for (const [seen, passes, further] of [
    [3, 5, 4],
    [6, 6, 6],
    [1, 4, 10],
  ] as const) {
    const missed = passes - seen;
    expect(chanceAllMissed(seen, passes, further)).toBeCloseTo(
      integral(seen, missed + further) / integral(seen, missed),
      6,
    );
  }
});

test('no further pass misses nothing; more of them miss less', () => {
  expect(chanceAllMissed(3, 4, 0)).toBe(1);
  expect(chanceAllMissed(3, 4, 20)).toBeLessThan(chanceAllMissed(3, 4, 10));
  expect(() => chanceAllMissed(5, 4, 1)).toThrow(expect.objectContaining({ path: 'seen' }));
});
