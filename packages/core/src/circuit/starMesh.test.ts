import { expect, test } from 'vitest';
import { type Edge, starMesh } from './starMesh.js';

const edge = (from: string, to: string, siemens: number): Edge => ({ from, to, ohms: 1 / siemens });

test('two parts in series share one current and divide the voltage', () => {
  const upper = edge('plus', 'middle', 1);
  const lower = edge('minus', 'middle', 1);
  const { siemens, volts, share } = starMesh([lower, upper], 'minus', 'plus');
  expect(siemens).toBe(0.5);
  expect(Object.fromEntries(volts)).toEqual({ minus: 0, plus: 1, middle: 0.5 });
  expect(share.get(upper)).toBe(1);
  expect(share.get(lower)).toBe(-1);
});

test('a balanced bridge carries nothing across', () => {
  const across = edge('left', 'right', 5);
  const bridge = [
    edge('minus', 'left', 1),
    edge('left', 'plus', 2),
    edge('minus', 'right', 3),
    edge('right', 'plus', 6),
    across,
  ];
  const { volts, share } = starMesh(bridge, 'minus', 'plus');
  expect(volts.get('left')).toBeCloseTo(2 / 3, 15);
  expect(share.get(across)).toBeCloseTo(0, 15);
});

test('0 Ω joins two nodes and carries what flows on', () => {
  const joining = edge('node', 'minus', Number.POSITIVE_INFINITY);
  const { siemens, volts, share } = starMesh(
    [joining, edge('node', 'far', 0.25), edge('far', 'plus', 0.25)],
    'minus',
    'plus',
  );
  expect(siemens).toBe(0.125);
  expect(volts.get('node')).toBe(0);
  expect(share.get(joining)).toBe(1);
});

test('parallel parts share the current by their conductances, beside 0 Ω they carry none', () => {
  const [small, large] = [edge('plus', 'node', 1), edge('plus', 'node', 3)];
  const beside = edge('node', 'minus', 1);
  const joining = edge('node', 'minus', Number.POSITIVE_INFINITY);
  const { share } = starMesh([small, large, beside, joining], 'minus', 'plus');
  expect([small, large, joining].map((one) => share.get(one))).toEqual([0.25, 0.75, 1]);
  expect(share.get(beside) ?? 0).toBe(0);
});

test('what only one terminal leads to has that terminal’s voltage and no current', () => {
  const stub = edge('plus', 'far', 1);
  const { siemens, volts, share } = starMesh([stub], 'minus', 'plus');
  expect(siemens).toBe(0);
  expect(volts.get('far')).toBe(1);
  expect(share.get(stub) ?? 0).toBe(0);
});
