import { expect, test } from 'vitest';
import { type RandomNumbers, randomNumbers } from '../statistics/randomNumbers.js';
import { pooledScatter, type Scatter } from './pooledScatter.js';

/** The deviation of so many normal numbers about a line, as an estimate with so many degrees of freedom. */
function drawn(random: RandomNumbers, deviation: number, degreesOfFreedom: number): Scatter {
  let squares = 0;
  for (let i = 0; i < degreesOfFreedom; i++) squares += (deviation * random.normal()) ** 2;
  return { deviation: Math.sqrt(squares / degreesOfFreedom), degreesOfFreedom };
}

test('of series that repeat equally well it is theirs, as good as known', () => {
  const random = randomNumbers(41);
  const many = Array.from({ length: 2000 }, () => drawn(random, 0.003, 2));
  const { deviation, degreesOfFreedom } = pooledScatter(many)!;
  expect(deviation / 0.003).toBeCloseTo(1, 1);
  expect(degreesOfFreedom).toBeGreaterThan(40);
});

test('of variances drawn from a scaled inverse χ² distribution it finds that one', () => {
  const random = randomNumbers(42);
  const many = Array.from({ length: 20_000 }, () => {
    const shape = drawn(random, 1, 6).deviation;
    return drawn(random, 0.01 / shape, 3);
  });
  const { deviation, degreesOfFreedom } = pooledScatter(many)!;
  expect(deviation / 0.01).toBeCloseTo(1, 1);
  expect(degreesOfFreedom).toBeGreaterThan(5.4);
  expect(degreesOfFreedom).toBeLessThan(6.6);
});

test('sensors that repeat each in its own way share little', () => {
  const random = randomNumbers(43);
  const many = Array.from({ length: 200 }, (_, i) => drawn(random, 10 ** (i % 5), 4));
  expect(pooledScatter(many)!.degreesOfFreedom).toBeLessThan(1);
});

test('two series, or such as a coarse recorder shows without scatter, tell nothing', () => {
  const one = { deviation: 1, degreesOfFreedom: 3 };
  const still = { deviation: 0, degreesOfFreedom: 3 };
  expect(pooledScatter([one, one, still, still])).toBeUndefined();
  expect(pooledScatter([one, one, one, still])).toEqual({
    deviation: expect.closeTo(1.2026, 4),
    degreesOfFreedom: Infinity,
  });
  expect(() => pooledScatter([{ ...one, degreesOfFreedom: 0 }])).toThrow(
    expect.objectContaining({ path: 'scatters[0].degreesOfFreedom' }),
  );
});
