import { expect, test } from 'vitest';
import { randomNumbers } from './randomNumbers.js';

test('one seed repeats its stream, another gives another', () => {
  const draw = (seed: number) => Array.from({ length: 5 }, randomNumbers(seed).uniform);
  expect(draw(1)).toEqual(draw(1));
  expect(draw(1)).not.toEqual(draw(2));
});

test('uniform and normal deviates have the moments that their names promise', () => {
  const { uniform, normal } = randomNumbers(42);
  const count = 200_000;
  let [sum, sumOfNormals, squares, fourths] = [0, 0, 0, 0];
  for (let i = 0; i < count; i++) {
    const u = uniform();
    expect(u >= 0 && u < 1).toBe(true);
    sum += u;
    const z = normal();
    sumOfNormals += z;
    squares += z * z;
    fourths += z ** 4;
  }
  const fourErrors = 4 / Math.sqrt(count);
  expect(Math.abs(sum / count - 0.5)).toBeLessThan(fourErrors * Math.sqrt(1 / 12));
  expect(Math.abs(sumOfNormals / count)).toBeLessThan(fourErrors);
  expect(Math.abs(squares / count - 1)).toBeLessThan(fourErrors * Math.sqrt(2));
  expect(Math.abs(fourths / count - 3)).toBeLessThan(fourErrors * Math.sqrt(96));
});

test('a filled list goes through the same stream as single draws', () => {
  const numbers = new Float64Array(7);
  randomNumbers(5).fill(numbers);
  expect(Array.from(numbers)).toEqual(Array.from({ length: 7 }, randomNumbers(5).uniform));
});
