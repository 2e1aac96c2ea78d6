import { expect, test } from 'vitest';
import { type Edge, starMesh } from './starMesh.js';

const edge = (from: string, to: string, ohms: number): Edge => ({ from, to, ohms });
const volt = { id: 'source', from: 'minus', to: 'plus', ohms: 0, volts: 1 };

test('two parts in series share one current and divide the voltage', () => {
  const upper = edge('plus', 'middle', 1);
  const lower = edge('minus', 'middle', 1);
  const { volts, amps } = starMesh([lower, upper], volt);
  expect(Object.fromEntries(volts)).toEqual({ minus: 0, plus: 1, middle: 0.5 });
  expect([volt, upper, lower].map((one) => amps.get(one))).toEqual([0.5, 0.5, -0.5]);
});

test('a balanced bridge carries nothing across', () => {
  const across = edge('left', 'right', 5);
  const bridge = [
    edge('minus', 'left', 6),
    edge('left', 'plus', 3),
    edge('minus', 'right', 2),
    edge('right', 'plus', 1),
    across,
  ];
  const { volts, amps } = starMesh(bridge, volt);
  expect(volts.get('left')).toBeCloseTo(2 / 3, 15);
  expect(amps.get(across)).toBeCloseTo(0, 15);
});

test('0 Ω joins two nodes and carries what flows on', () => {
  const joining = edge('node', 'minus', 0);
  const { volts, amps } = starMesh([joining, edge('node', 'far', 4), edge('far', 'plus', 4)], volt);
  expect(volts.get('node')).toBe(0);
  expect(amps.get(joining)).toBe(0.125);
});

test('parallel parts share the current by their conductances, beside 0 Ω they carry none', () => {
  const [small, large] = [edge('plus', 'node', 3), edge('plus', 'node', 1)];
  const beside = edge('node', 'minus', 1);
  const joining = edge('node', 'minus', 0);
  const { amps } = starMesh([small, large, beside, joining], { ...volt, volts: 3 });
  expect(amps.get(small)).toBeCloseTo(1, 15);
  expect(amps.get(large)).toBeCloseTo(3, 15);
  expect(amps.get(joining)).toBeCloseTo(4, 15);
  expect(amps.get(beside) ?? 0).toBe(0);
});

test('a current source drives its current through what lies across it, and nothing without a way back', () => {
  const source = { id: 'source', from: 'minus', to: 'plus', ohms: Infinity, amps: 2 };
  const load = edge('plus', 'minus', 3);
  const driven = starMesh([load], source);
  expect(driven.volts.get('plus')).toBeCloseTo(6, 15);
  expect(driven.amps.get(load)).toBe(2);
  const open = starMesh([edge('plus', 'far', 1)], source);
  expect(open.volts.get('plus')).toBe(0);
  expect(open.amps.get(source)).toBe(0);
});

test('what only one terminal leads to has that terminal’s voltage and no current', () => {
  const stub = edge('plus', 'far', 1);
  const { volts, amps } = starMesh([stub], volt);
  expect(volts.get('far')).toBe(1);
  expect(amps.get(stub) ?? 0).toBe(0);
});
