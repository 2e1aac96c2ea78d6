import { expect, test } from 'vitest';
import { traceModel } from './traceModel.js';

const columns = (first: number, ...values: readonly number[]) => ({
  first,
  low: Float32Array.from(values),
  high: Float32Array.from(values, (one) => one + 1),
});
const dropout = { start: 5, end: 5.01, depth: -2 };

test('keeps the columns that are seen and widens its axis for a reading beyond it', () => {
  const model = traceModel();
  model.begin({ closed: 0.5, open: 4 });
  model.add(columns(7, 1, Number.NaN, 5), 0.09);
  expect(model.columnAt(7)).toEqual([1, 2]);
  expect(model.columnAt(8)).toBeUndefined();
  expect(model.columnAt(9)).toEqual([5, 6]);
  expect(model.now()).toMatchObject({ lowest: 0, highest: 6, latest: 0.09 });
  model.add(columns(7 + 1024, 1), 11);
  expect(model.columnAt(7)).toBeUndefined();
  model.begin({});
  expect(model.columnAt(9)).toBeUndefined();
});

test('numbers findings by all that were found, and shows those that are seen', () => {
  const model = traceModel();
  model.tell([{ ...dropout, start: 1, end: 1.1 }, dropout], 7, [], 10);
  expect(model.now().findings.map(({ number }) => number)).toEqual([7]);
});

test('a hint that goes on is one, and one that comes again later another', () => {
  const model = traceModel();
  const hint = { hint: 'noisy', at: 1, measured: 0.2, limit: { most: 0.1 }, unit: '1' } as const;
  model.tell([], 0, [hint], 1);
  model.tell([], 0, [{ ...hint, at: 1.1 }], 1.1);
  expect(model.now().hints).toEqual([{ hint: 'noisy', start: 1, end: 1.1 }]);
  model.tell([], 0, [{ ...hint, at: 4 }], 4);
  expect(model.now().hints).toHaveLength(2);
});
