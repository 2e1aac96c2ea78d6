import { expect, test } from 'vitest';
import { smoothness } from './smoothness.js';

const line = { intercept: 0.1, slope: 0.01 };
const shaft = Float64Array.from({ length: 5001 }, (_, i) => i / 62.5);
const straight = shaft.map((at) => 0.1 + 0.01 * at);

test('a slow bend hardly counts, a short one of the same size counts whole', () => {
  const slow = straight.map((ratio, i) => ratio + 0.01 * Math.sin((Math.PI * shaft[i]!) / 80));
  const short = straight.map((ratio, i) => ratio + (Math.abs(shaft[i]! - 30) < 0.2 ? 0.01 : 0));
  const found = [slow, short].map((ratio) => smoothness({ shaft, ratio, uncertainty: 1e-4 }, line));
  if (found[0]?.kind !== 'judged' || found[1]?.kind !== 'judged') throw new Error('not judged');
  // The steepest hundredth of half a sine.
  expect(found[0].value).toBeCloseTo(0.01 * Math.sin(Math.PI / 100), 4);
  expect(found[1].value).toBeCloseTo(0.01, 14);
  expect(Math.abs(found[1].at - 30)).toBeLessThan(0.8);
  expect(found[1].uncertainty).toBeCloseTo(Math.SQRT2 * 1e-4, 14);
});

test('a difference between two strokes is no roughness of either', () => {
  const there = Float64Array.of(...shaft, ...shaft.toReversed());
  const back = Float64Array.of(...straight, ...straight.toReversed().map((ratio) => ratio + 0.02));
  const found = smoothness({ shaft: there, ratio: back }, line);
  // The last reading of the first stroke begins the second: there alone both meet.
  expect(found).toMatchObject({ kind: 'judged' });
  const inner = { shaft: there.with(5000, 79.99), ratio: back.with(5000, straight[5000]!) };
  const { value } = smoothness(inner, line) as { value: number };
  expect(value).toBeLessThan(0.03);
});

test('coarse readings and a shaft at rest are not judged', () => {
  const few = Float64Array.from({ length: 101 }, (_, i) => i);
  expect(smoothness({ shaft: few, ratio: few }, line)).toEqual({
    kind: 'not-judged',
    reason: 'too-few-readings',
  });
  const still = { shaft: new Float64Array(9), ratio: new Float64Array(9) };
  expect(smoothness(still, line)).toEqual({ kind: 'not-judged', reason: 'no-movement' });
});
