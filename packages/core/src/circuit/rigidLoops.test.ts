import { expect, test } from 'vitest';
import type { Element } from './network.js';
import { isContradictory, rigidLoops } from './rigidLoops.js';

const wire = (id: string, from: string, to: string): Element => ({ id, from, to, ohms: 0 });

test('finds a loop through several 0 Ω parts and names all of them, what closes it first', () => {
  const loops = rigidLoops([
    wire('1', 'a', 'b'),
    wire('2', 'b', 'c'),
    wire('3', 'c', 'a'),
    wire('4', 'c', 'd'),
  ]);
  expect(loops).toHaveLength(1);
  expect(loops[0]!.map(({ id }) => id)).toEqual(['3', '2', '1']);
  expect(isContradictory(loops[0]!)).toBe(false);
});

test('a source across 0 Ω contradicts Kirchhoff’s voltage law, two equal ones side by side do not', () => {
  const source = { ...wire('v', 'a', 'b'), volts: 5 };
  expect(rigidLoops([source, wire('1', 'a', 'b')]).map(isContradictory)).toEqual([true]);
  expect(rigidLoops([source, { ...source, id: 'w' }]).map(isContradictory)).toEqual([false]);
  const back = { ...wire('w', 'b', 'a'), volts: -5 };
  expect(rigidLoops([source, back]).map(isContradictory)).toEqual([false]);
});

test('a part with both ends on one node is a loop of its own; resistance breaks every loop', () => {
  expect(rigidLoops([wire('1', 'a', 'a')])[0]).toHaveLength(1);
  expect(rigidLoops([wire('1', 'a', 'b'), { ...wire('2', 'a', 'b'), ohms: 1 }])).toEqual([]);
});
