import { expect, test } from 'vitest';
import type { Element } from './network.js';
import { rigidLoops } from './rigidLoops.js';

const wire = (id: string, from: string, to: string): Element => ({
  id,
  from,
  to,
  ohms: 0,
});

test('finds a loop through several 0 Ω parts and names all of them', () => {
  const loops = rigidLoops([
    wire('1', 'a', 'b'),
    wire('2', 'b', 'c'),
    wire('3', 'c', 'a'),
    wire('4', 'c', 'd'),
  ]);
  expect(loops).toHaveLength(1);
  expect(loops[0]?.members.map(({ id }) => id).sort()).toEqual(['1', '2', '3']);
  expect(loops[0]?.contradictory).toBe(false);
});

test('a source across 0 Ω contradicts Kirchhoff’s voltage law', () => {
  const source: Element = { id: 'v', from: 'a', to: 'b', ohms: 0, volts: 5 };
  expect(rigidLoops([source, wire('1', 'a', 'b')])[0]?.contradictory).toBe(true);
});

test('a part with both ends on one node is a loop of its own; resistance breaks every loop', () => {
  expect(rigidLoops([wire('1', 'a', 'a')])[0]?.members).toHaveLength(1);
  expect(rigidLoops([wire('1', 'a', 'b'), { ...wire('2', 'a', 'b'), ohms: 1 }])).toEqual([]);
});
