import { operatingPoint } from '@truesweep/core';
import { expect, test } from 'vitest';
import { workingText } from '../workingText.js';
import { explainOperatingPoint } from './explainOperatingPoint.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, contact: 50 },
  load: { pullDown: 10_000, pullUp: { ohms: 47_000, volts: 5 } },
};

test.each(['thevenin', 'millman'] as const)(
  'the reading by %s is that of the circuit',
  (method) => {
    const { answer } = explainOperatingPoint(circuit, 0.5, method);
    expect(answer.value / (operatingPoint(circuit, 0.5).output as number)).toBeCloseTo(1, 13);
  },
);

test('the lines are what one would write down', () => {
  const bare = { ...circuit, sensor: { track: 5000 }, load: {} };
  expect(workingText(explainOperatingPoint(bare, 0.9))).toContain(
    '    = 5\u00a0V · 4.5\u00a0kΩ / (1.5\u00a0kΩ + 4.5\u00a0kΩ)',
  );
});

test('a circuit whose ways do not meet at the wiper is refused by what makes it so', () => {
  const shorted = { ...circuit, faults: [{ kind: 'lifted-wiper' as const }] };
  expect(() => explainOperatingPoint(shorted, 0.5)).toThrow('circuit.faults are given');
});
