import {
  type Circuit,
  type Expectation,
  expectation,
  operatingPoint,
  type Position,
  type Volts,
} from '@truesweep/core';
import type { RandomStream } from '../simulator/randomStream.js';

/** A sensor on a bench: what is expected of it, and what it does. */
export interface Bench {
  readonly expected: Expectation;
  readonly span: Volts;
  readonly source: Volts;
  /** Output over travel, V; with a lead interrupted too. */
  readonly output: (travel: number) => Volts;
  readonly withoutLead: (lead: 'supply' | 'ground') => (travel: number) => Volts;
  readonly lifted: Volts;
}

const tolerances = {
  source: 0.01,
  limiter: 0.05,
  track: 0.1,
  pullDown: 0.05,
  closedPosition: 0.02,
  openPosition: 0.03,
};

/** How much of its tolerance a part uses at most. */
const used = 0.6;

/** Common values, rising and falling, with a pull-down or a pull-up. */
export function drawBench(random: RandomStream): Bench {
  const ends = [random.between(0.06, 0.16), random.between(0.78, 0.93)] as const;
  const [closedPosition, openPosition] = random.chance(0.75) ? ends : ends.toReversed();
  const volts = random.pick([5, 5, 5, 3.3, 9, 12]);
  const limiter = random.pick([0, 470, 1000, 1000, 2200]);
  const track = random.pick([1000, 2200, 4700, 5000, 10_000]);
  const load = random.chance(0.8)
    ? { pullDown: random.pick([10e6, 1e6, 100e3]) }
    : { pullDown: 10e6, pullUp: { ohms: 100e3, volts: 5 } };
  const sensor = { track, closedPosition: closedPosition!, openPosition: openPosition! };
  const expected = expectation({ source: { volts }, limiter, sensor, load }, tolerances);
  const off = (tolerance: number): number => random.between(-used, used) * tolerance;
  const actual: Circuit = {
    source: { volts: volts * (1 + off(tolerances.source)) },
    limiter: limiter * (1 + off(tolerances.limiter)),
    sensor: {
      track: track * (1 + off(tolerances.track)),
      closedPosition: sensor.closedPosition + off(tolerances.closedPosition),
      openPosition: sensor.openPosition + off(tolerances.openPosition),
    },
    load,
  };
  const { windows } = expected;
  return {
    expected,
    span: Math.abs(windows.open.nominal - windows.closed.nominal),
    source: volts,
    output: outputOver(actual),
    withoutLead: (lead) => outputOver({ ...actual, leads: { [lead]: Number.POSITIVE_INFINITY } }),
    lifted: outputAt({ ...actual, sensor: { ...actual.sensor, contact: Infinity } }, 0.5),
  };
}

function outputAt(circuit: Circuit, position: Position): Volts {
  return operatingPoint(circuit, position).output as Volts;
}

/** The solved circuit at many places, straight lines between them. */
function outputOver(circuit: Circuit): (travel: number) => Volts {
  const { closedPosition = 0, openPosition = 1 } = circuit.sensor;
  const places = 400;
  const solved = Float64Array.from({ length: places + 1 }, (_, i) => outputAt(circuit, i / places));
  return (travel) => {
    const position = closedPosition + travel * (openPosition - closedPosition);
    const at = Math.min(places - 1e-9, Math.max(0, position * places));
    const below = Math.floor(at);
    return solved[below]! + (at - below) * (solved[below + 1]! - solved[below]!);
  };
}
