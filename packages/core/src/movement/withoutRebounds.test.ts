import { expect, test } from 'vitest';
import { withoutRebounds } from './withoutRebounds.js';

test('flattens what lies between the touch and the settling, and nothing else', () => {
  const time = Float64Array.from({ length: 8 }, (_, i) => i);
  const path = Float64Array.of(1, 1, 0.1, 0.3, 0.1, 0.2, 0.1, 0.1);
  const snap = { start: 1, touch: 2, settled: 6, from: 1, rebounds: [0.2, 0.1] };
  expect(Array.from(withoutRebounds(path, time, [snap]))).toEqual([
    1, 1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1,
  ]);
});
