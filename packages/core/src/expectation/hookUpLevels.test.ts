import { expect, test } from 'vitest';
import { hookUpLevels } from './hookUpLevels.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};

test('a broken supply lead leaves the signal at common, a broken ground lead at the source', () => {
  const { brokenLead } = hookUpLevels(circuit);
  expect(brokenLead.supply).toEqual({ closed: 0, open: 0 });
  expect(brokenLead.ground!.closed).toBeCloseTo(5, 2);
});

test('four connections leave the signal lead elsewhere; the supply is what the limiter leaves', () => {
  const { connections, supply, source } = hookUpLevels(circuit);
  expect(connections).toHaveLength(4);
  expect(connections.map(({ open }) => open.toFixed(1))).toContain('3.9');
  expect(supply).toBeCloseTo(4, 3);
  expect(source).toBe(5);
});
