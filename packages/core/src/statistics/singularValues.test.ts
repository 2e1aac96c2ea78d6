import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { singularValues } from './singularValues.js';

test('of [[3, 0], [4, 5]] they are √5 and 3√5', () => {
  const { values } = singularValues([
    [3, 4],
    [0, 5],
  ]);
  const [small, large] = values.toSorted((a, b) => a - b);
  expect(small).toBeCloseTo(Math.sqrt(5), 14);
  expect(large).toBeCloseTo(3 * Math.sqrt(5), 14);
});

test('a column that is twice another leaves one value of nothing', () => {
  const { values } = singularValues([
    [1, 2, 3],
    [2, 4, 6],
  ]);
  expect(Math.min(...values)).toBeLessThan(1e-15);
  expect(Math.max(...values)).toBeCloseTo(Math.sqrt(70), 13);
});

test('they put any matrix together again, from orthonormal columns', () => {
  const number = fc.double({ min: -100, max: 100, noNaN: true });
  const matrix = fc
    .tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 6 }))
    .chain(([rows, columns]) =>
      fc.array(fc.array(number, { minLength: rows, maxLength: rows }), {
        minLength: columns,
        maxLength: columns,
      }),
    );
  fc.assert(
    fc.property(matrix, (columns) => {
      const { left, values, right } = singularValues(columns);
      columns.forEach((column, j) => {
        column.forEach((at, row) => {
          const again = values.reduce((sum, s, k) => sum + left[k]![row]! * s * right[k]![j]!, 0);
          expect(Math.abs(again - at)).toBeLessThan(1e-11);
        });
        const length = right[j]!.reduce((sum, at) => sum + at * at, 0);
        expect(length).toBeCloseTo(1, 12);
      });
    }),
    { numRuns: 200 * soak },
  );
});
