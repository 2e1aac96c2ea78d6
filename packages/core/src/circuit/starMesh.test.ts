import { expect, test } from 'vitest';
import { share, starMesh } from './starMesh.js';

/** A symmetric conductance matrix from edges [from, to, siemens]. */
function matrix(size: number, edges: readonly (readonly [number, number, number])[]): Float64Array {
  const values = new Float64Array(size * size);
  for (const [from, to, siemens] of edges) {
    values[from * size + to]! += siemens;
    values[to * size + from]! += siemens;
  }
  return values;
}

test('two parts in series share one current and divide the voltage', () => {
  const { conductance, voltage, current } = starMesh(
    3,
    matrix(3, [
      [0, 2, 1],
      [2, 1, 1],
    ]),
    0,
    1,
  );
  expect(conductance).toBe(0.5);
  expect(Array.from(voltage)).toEqual([0, 1, 0.5]);
  expect(current[1 * 3 + 2]).toBe(1);
  expect(current[2 * 3 + 0]).toBe(1);
});

test('a balanced bridge carries nothing across', () => {
  const bridge = matrix(4, [
    [0, 2, 1],
    [2, 1, 2],
    [0, 3, 3],
    [3, 1, 6],
    [2, 3, 5],
  ]);
  const { voltage, current } = starMesh(4, bridge, 0, 1);
  expect(voltage[2]).toBeCloseTo(2 / 3, 15);
  expect(current[2 * 4 + 3]).toBeCloseTo(0, 15);
});

test('0 Ω joins two nodes and carries what flows on', () => {
  const { conductance, voltage, current } = starMesh(
    4,
    matrix(4, [
      [0, 2, Number.POSITIVE_INFINITY],
      [2, 3, 0.25],
      [3, 1, 0.25],
    ]),
    0,
    1,
  );
  expect(conductance).toBe(0.125);
  expect(voltage[2]).toBe(0);
  expect(current[2 * 4 + 0]).toBe(1);
});

test('what no path leads to has no voltage, what only one terminal leads to has that terminal’s', () => {
  const { voltage } = starMesh(4, matrix(4, [[1, 2, 1]]), 0, 1);
  expect(Array.from(voltage)).toEqual([0, 1, 1, Number.NaN]);
});

test('share gives each parallel part its fraction', () => {
  expect(share(1, 4)).toBe(0.25);
  expect(share(1, Number.POSITIVE_INFINITY)).toBe(0);
  expect(share(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY)).toBe(1);
  expect(share(0, 0)).toBe(0);
});
