import { type SimulatedFault, type SimulatedMovement, simulateSweep } from '@truesweep/core';
import { checkedLine } from '../controller/checkedLine.js';

/** The demo's bench, which the page has too once its open position is entered. */
export const asDemo = '#v1&openPosition=88+%25';

/** The demo's bench. */
export const benchCircuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.88 },
  load: { pullDown: 10e6 },
};
/** What of the source the sensor gets behind its limiting resistor. */
const supplyPart = 5000 / 6000;
/** Of 12 bits. */
const fullCount = 4096;

/** A wiper that lifts at one place. */
export const worn: SimulatedFault = {
  kind: 'worn-spot',
  travel: 0.4,
  width: 0.015,
  ohms: Number.POSITIVE_INFINITY,
};

/** Three slow sweeps and three snaps, after a rest in which a page finds its port. */
export const whole: readonly SimulatedMovement[] = [
  { kind: 'hold', seconds: 4 },
  ...[1, 2, 3].flatMap((): SimulatedMovement[] => [
    { kind: 'turn', to: 1, seconds: 1 },
    { kind: 'hold', seconds: 0.4 },
    { kind: 'turn', to: 0, seconds: 1 },
    { kind: 'hold', seconds: 0.5 },
  ]),
  ...[1, 2, 3].flatMap((): SimulatedMovement[] => [
    { kind: 'turn', to: 1, seconds: 0.8 },
    { kind: 'hold', seconds: 0.4 },
    { kind: 'snap', seconds: 0.06, restitution: 0.3 },
    { kind: 'hold', seconds: 0.6 },
  ]),
];

/** Lines as a recorder of the demo's bench writes them, of signal and supply, with the stamp of each in s. */
export function recorderLines(options: {
  readonly movements?: readonly SimulatedMovement[];
  readonly faults?: readonly SimulatedFault[];
  readonly interval?: number;
  /** Counts of 12 bits at 5 V where left out. */
  readonly unit?: 'counts' | 'mV';
  /** Whether each line carries its check, and the heading comes again every second. */
  readonly isChecked?: boolean;
}): {
  readonly lines: readonly string[];
  readonly seconds: readonly number[];
  readonly counts: readonly number[];
} {
  const {
    movements = whole,
    faults = [],
    interval = 1e-3,
    unit = 'counts',
    isChecked = false,
  } = options;
  const [full, perVolt] = unit === 'mV' ? [5000, 1000] : [fullCount, fullCount / 5];
  const { sweep } = simulateSweep({
    circuit: benchCircuit,
    movements,
    faults,
    recorder: { interval, noise: 0.001 },
    seed: 11,
  });
  const line = (text: string) => `${isChecked ? checkedLine(text) : text}\n`;
  const heading = line(`time (us),signal (${unit}),supply (${unit})`);
  const lines: string[] = [];
  const seconds: number[] = [];
  const counts: number[] = [];
  const perSecond = Math.round(1 / interval);
  for (const [i, at] of sweep.time.entries()) {
    if (i === 0 || (isChecked && i % perSecond === 0)) {
      lines.push(heading);
      seconds.push(at);
    }
    // A zero has no sign.
    const count = Math.round(sweep.signal[i]! * perVolt) + 0;
    const supply = Math.round(supplyPart * full);
    lines.push(line(`${Math.round(1e6 * at)},${count},${supply}`));
    seconds.push(at);
    counts.push(count);
  }
  return { lines, seconds, counts };
}
