import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { lowestValues } from './lowestValues.js';

test('the last of the lowest stands at its rank among all, in whatever order they came', () => {
  const values = fc.array(fc.oneof(fc.integer({ min: -5, max: 5 }), fc.double({ noNaN: true })), {
    minLength: 1,
    maxLength: 100,
  });
  fc.assert(
    fc.property(values, fc.nat(), (list, any) => {
      const count = 1 + (any % list.length);
      const lowest = lowestValues(count);
      lowest.add(Float64Array.from(list.slice(0, any % 7)));
      lowest.add(Float64Array.from(list.slice(any % 7)));
      const sorted = Float64Array.from(list).sort();
      expect(lowest.last() + 0).toBe(sorted[count - 1]! + 0);
    }),
    { numRuns: 500 * soak },
  );
});
