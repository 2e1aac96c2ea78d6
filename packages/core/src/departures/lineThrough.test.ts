import { expect, test } from 'vitest';
import { lineThrough } from './lineThrough.js';

const time = Float64Array.of(10, 11, 12, 13);

test('is the line itself on a line, whatever lies beside it', () => {
  const mean = Float64Array.of(9, 2, 4, 6);
  expect(lineThrough({ time, mean }, 1, 3)).toEqual({
    bins: 3,
    time: 12,
    level: 4,
    speed: 2,
    leverage: Math.SQRT2,
  });
});

test('a single moment has no speed', () => {
  const mean = Float64Array.of(1, 2, 3, 4);
  expect(lineThrough({ time, mean }, 2, 2)).toMatchObject({ level: 3, speed: 0, leverage: 0 });
  expect(lineThrough({ time: new Float64Array(4), mean }, 0, 3)).toMatchObject({
    level: 2.5,
    speed: 0,
  });
});
