import { describe, expect, test } from 'vitest';
import type { Circuit } from '../circuit/circuit.js';
import { noLoad } from './noLoad.js';

/** A 5 kΩ track on 1 kΩ of limiter with a heavy load. */
const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000 },
  load: { pullDown: 5000 },
};

/** Worked by hand: volts at the wiper and across the track for a wiper at x, by the parallel of track below and load. */
function reading(x: number): { volts: number; across: number } {
  const below = (5000 * x * 5000) / (5000 * x + 5000);
  const amps = 5 / (1000 + 5000 * (1 - x) + below);
  return { volts: amps * below, across: amps * (5000 * (1 - x) + below) };
}

describe('a loaded reading gives back the place on the track', () => {
  test.each([0, 0.1234, 0.5, 0.777, 1])('%d', (x) => {
    const { volts, across } = reading(x);
    expect(noLoad(circuit, 'volts')!.unloaded(volts)).toBeCloseTo(x, 6);
    expect(noLoad(circuit, 'ratio')!.unloaded(volts / across)).toBeCloseTo(x, 6);
    expect(noLoad(circuit, 'ratio')!.loaded(x)).toBeCloseTo(volts / across, 6);
  });
});

test('beyond the ends it goes on straight', () => {
  const { unloaded, loaded, steepest } = noLoad(circuit, 'ratio')!;
  expect(unloaded(1.001)).toBeGreaterThan(1);
  expect(loaded(unloaded(1.001))).toBeCloseTo(1.001, 9);
  expect(steepest).toBeGreaterThan(1);
});

test('without a load the ratio is itself, for a falling connection too', () => {
  const falling: Circuit = {
    ...circuit,
    load: {},
    connection: { supply: 'bottom', ground: 'top', signal: 'wiper' },
  };
  expect(noLoad(falling, 'ratio')!.unloaded(0.3)).toBeCloseTo(0.3, 12);
  expect(noLoad(falling, 'volts')!.unloaded(5 / 6)).toBeCloseTo(0.2, 12);
});

test('an output that turns back gives nothing; one without a value is refused', () => {
  const pullUp = { ohms: 1000, volts: 12 };
  expect(noLoad({ ...circuit, load: { pullUp } }, 'volts')).toBeUndefined();
  const cut: Circuit = { ...circuit, faults: [{ kind: 'broken-lead', lead: 'supply' }] };
  expect(() => noLoad(cut, 'ratio')).toThrow(expect.objectContaining({ path: 'circuit' }));
});
