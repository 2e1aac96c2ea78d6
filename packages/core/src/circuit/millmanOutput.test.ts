import { describe, expect, test } from 'vitest';
import type { Circuit } from './circuit.js';
import { contactLegs, legsOutput } from './millmanOutput.js';
import { operatingPoint } from './operatingPoint.js';

const circuit: Circuit = {
  source: { volts: 5, ohms: 2 },
  limiter: 1000,
  leads: { supply: 0.1, ground: 0.3, signal: 0.2 },
  sensor: {
    track: 4000,
    bottomResidual: 20,
    topResidual: 30,
    contact: 50,
    terminalResistors: { bottom: 10, wiper: 800, top: 15 },
  },
  load: { pullDown: 47e3, pullUp: { ohms: 22e3, volts: 3.3 } },
};

describe('millmanOutput', () => {
  test.each([
    circuit,
    { ...circuit, load: {} },
    { ...circuit, load: { pullDown: 1e6 } },
    { source: { volts: 5 }, limiter: 0, sensor: { track: 1000 }, load: { pullDown: 1000 } },
  ] satisfies Circuit[])('is what the general solver gives (%#)', (at: Circuit) => {
    for (const position of [0, 1e-9, 0.25, 0.5, 1]) {
      const output = operatingPoint(at, position).output as number;
      expect(Math.abs(legsOutput(contactLegs(at)!, position) - output)).toBeLessThan(1e-14 * 5);
    }
  });

  test.each([
    { ...circuit, faults: [{ kind: 'lifted-wiper' }] },
    { ...circuit, connection: { supply: 'bottom', ground: 'top', signal: 'wiper' } },
    { ...circuit, source: { volts: 5, currentLimit: 0.1 } },
    { ...circuit, load: { pullDown: 0 } },
    { ...circuit, load: { common: 'sensor' } },
    { ...circuit, load: { pullUp: { ohms: 1000, from: 'source' } } },
    { ...circuit, leads: { ground: Number.POSITIVE_INFINITY } },
  ] satisfies Circuit[])('leaves other circuits to the solver (%#)', (at: Circuit) => {
    expect(contactLegs(at)).toBeUndefined();
  });
});
