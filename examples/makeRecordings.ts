// Makes the recordings of the demo. `node examples/makeRecordings.ts` writes them anew, after a build.
import { writeFileSync } from 'node:fs';
import {
  type Circuit,
  type SimulatedFault,
  type SimulatedMovement,
  type Sweep,
  simulateSweep,
} from '@truesweep/core';

/** Three sweeps by hand with a rest at each stop, then let go from the open stop. */
const movements: readonly SimulatedMovement[] = [
  { kind: 'hold', seconds: 0.5 },
  ...[1, 2, 3].flatMap((): SimulatedMovement[] => [
    { kind: 'turn', to: 1, seconds: 1.3, unevenness: 0.01 },
    { kind: 'hold', seconds: 0.4 },
    { kind: 'turn', to: 0, seconds: 1.3, unevenness: 0.01 },
    { kind: 'hold', seconds: 0.5 },
  ]),
  { kind: 'turn', to: 1, seconds: 1, unevenness: 0.01 },
  { kind: 'hold', seconds: 0.4 },
  { kind: 'snap', seconds: 0.05, restitution: 0.35 },
  { kind: 'hold', seconds: 0.6 },
];

/** The bench of the demo's job with one piece of the sensor on it. */
function bench(track: number, closedPosition: number, openPosition: number): Circuit {
  return {
    source: { volts: 5 },
    limiter: 1000,
    sensor: { track, closedPosition, openPosition },
    load: { pullDown: 10e6 },
  };
}

/** The wiper lifts just above the closed throttle, on every pass. */
const wear: SimulatedFault = {
  kind: 'worn-spot',
  travel: 0.06,
  width: 0.01,
  ohms: Number.POSITIVE_INFINITY,
};

/** A recording as the demo's logger writes it: whole milliseconds, volts to the millivolt. */
function written({ time, signal }: Sweep): string {
  const rows = Array.from(
    time,
    (seconds, i) => `${Math.round(seconds * 1000)},${signal[i]?.toFixed(3)}`,
  );
  return ['time (ms),wiper (V)', ...rows, ''].join('\n');
}

interface Plan {
  readonly name: string;
  readonly circuit: Circuit;
  readonly interval: number;
  readonly faults?: readonly SimulatedFault[];
  readonly seed: number;
}

const plans: readonly Plan[] = [
  { name: 'sound.csv', circuit: bench(4850, 0.103, 0.887), interval: 0.001, seed: 401 },
  {
    name: 'worn.csv',
    circuit: bench(5200, 0.097, 0.872),
    interval: 0.001,
    faults: [wear],
    seed: 402,
  },
  { name: 'too-slow.csv', circuit: bench(4950, 0.101, 0.884), interval: 0.05, seed: 403 },
];

/** The demo's recordings; the same texts each time. */
export function makeRecordings(): { readonly name: string; readonly text: string }[] {
  return plans.map(({ name, circuit, interval, faults = [], seed }) => {
    const recorder = { interval, noise: 0.0015, resolution: 0.001, capacitance: 100e-12 };
    return {
      name,
      text: written(simulateSweep({ circuit, movements, recorder, faults, seed }).sweep),
    };
  });
}

if (import.meta.main) {
  for (const { name, text } of makeRecordings()) {
    writeFileSync(new URL(`recordings/${name}`, import.meta.url), text);
  }
}
