import { expect, test } from 'vitest';
import type { Element } from './network.js';
import { solveNetwork } from './solveNetwork.js';

const source = (id: string, to: string, volts: number): Element => ({
  id,
  from: 'common',
  to,
  ohms: 0,
  volts,
});
const resistor = (id: string, from: string, to: string, ohms: number): Element => ({
  id,
  from,
  to,
  ohms,
});
const solve = (...elements: Element[]) => solveNetwork({ reference: 'common', elements });

test('two sources meet at a node: Millman’s theorem', () => {
  const { volts, amps } = solve(
    source('a', 'plusA', 28),
    source('b', 'plusB', 7),
    resistor('ra', 'plusA', 'node', 4),
    resistor('rb', 'plusB', 'node', 1),
    resistor('load', 'node', 'common', 2),
  );
  expect(volts.node).toBeCloseTo(8, 14);
  expect(amps.load).toBeCloseTo(4, 14);
  expect(amps.rb).toBeCloseTo(-1, 14);
});

test('a current source drives its current through what is there, or nothing without a way back', () => {
  const drive: Element = { id: 'i', from: 'common', to: 'node', ohms: Infinity, amps: 0.002 };
  expect(solve(drive, resistor('r', 'node', 'common', 1000)).volts.node).toBeCloseTo(2, 14);
  expect(solve(drive, resistor('r', 'node', 'common', Number.POSITIVE_INFINITY)).amps.i).toBe(0);
});

test('equal ideal sources joined share an undetermined current but the voltage stands', () => {
  const { volts, amps } = solve(
    source('a', 'node', 5),
    source('b', 'node', 5),
    resistor('r', 'node', 'common', 5),
  );
  expect(volts.node).toBe(5);
  expect(amps.r).toBe(1);
  expect(amps.a).toEqual({ kind: 'undetermined', reason: 'shared-between-zero-ohm-paths' });
});

test('unequal ideal sources joined have no solution', () => {
  const { volts, amps } = solve(
    source('a', 'node', 5),
    source('b', 'node', 6),
    resistor('r', 'node', 'common', 5),
  );
  expect(amps.a).toEqual({ kind: 'unbounded', reason: 'sources-joined-without-resistance' });
  expect(amps.r).toEqual({ kind: 'undetermined', reason: 'circuit-without-solution' });
  expect(volts.node).toEqual({ kind: 'undetermined', reason: 'circuit-without-solution' });
});

test('two 0 Ω paths in parallel: the split is undetermined, the rest is not', () => {
  const { amps } = solve(
    source('a', 'plus', 1),
    resistor('one', 'plus', 'node', 0),
    resistor('two', 'plus', 'node', 0),
    resistor('r', 'node', 'common', 1),
  );
  expect(amps.one).toEqual({ kind: 'undetermined', reason: 'shared-between-zero-ohm-paths' });
  expect(amps.r).toBe(1);
});

test('a part of the network without a tie to common floats', () => {
  const { volts } = solve(source('a', 'plus', 1), resistor('r', 'far', 'farther', 1));
  expect(volts.far).toEqual({ kind: 'floating', reason: 'no-path-to-common' });
});
