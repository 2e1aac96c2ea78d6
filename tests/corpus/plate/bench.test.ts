import { type Circuit, operatingPoint } from '@truesweep/core';
import { expect, test } from 'vitest';
import { divided, noLegs } from '../divider.js';
import { randomStream } from '../simulator/randomStream.js';
import { contactFor, drawBench, restLevel, soundAt, windowOf } from './bench.js';

const random = randomStream(21);
const benches = Array.from({ length: 25 }, () => drawBench(random));

test('the divider agrees with the solved circuit, whole and with a leg interrupted', () => {
  for (const { nominal, circuit } of benches) {
    const solved = (change: Partial<Circuit>): number =>
      operatingPoint({ ...circuit, ...change }, 0.4).output as number;
    const sensor = { ...circuit.sensor, contact: 5e4 };
    expect(divided(nominal, 0.4, noLegs)).toBeCloseTo(solved({}), 6);
    expect(divided(nominal, 0.4, { ...noLegs, contact: 5e4 })).toBeCloseTo(solved({ sensor }), 6);
    expect(divided(nominal, 0.4, { ...noLegs, above: 800 })).toBeCloseTo(
      solved({ leads: { supply: 800 } }),
      6,
    );
    expect(divided(nominal, 0.4, { ...noLegs, contact: 1e13 })).toBeCloseTo(restLevel(nominal), 4);
    const wanted = (divided(nominal, 0.4, noLegs) + restLevel(nominal)) / 2;
    const contact = contactFor(nominal, 0.4, wanted);
    expect(divided(nominal, 0.4, { ...noLegs, contact })).toBeCloseTo(wanted, 4);
  }
});

test('the windows of the truth are those of the expectation, and hold every sound sensor', () => {
  for (const bench of benches) {
    const { nominal, expected, span } = bench;
    for (const end of ['closed', 'open'] as const) {
      const { low, high } = windowOf(nominal, end);
      const window = expected.windows[end];
      expect(Math.abs(low - window.low) / span).toBeLessThan(2e-3);
      expect(Math.abs(high - window.high) / span).toBeLessThan(2e-3);
      const reading = soundAt(bench, end === 'closed' ? 0 : 1);
      expect(reading).toBeGreaterThan(window.low);
      expect(reading).toBeLessThan(window.high);
    }
  }
});
