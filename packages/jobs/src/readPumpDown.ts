import {
  checkFields,
  checkReadable,
  checkSweep,
  type FieldRules,
  type HeldStep,
  heldSteps,
  InputError,
  listOf,
  type Sweep,
} from '@truesweep/core';
import { namedRules } from './checkInput.js';
import type { PortReading, PumpDown } from './readingsJob.js';

const volts = (value: unknown, path: string): void => {
  if (typeof value === 'number' && value >= 0 && value <= 1e6) return;
  throw new InputError('not-finite', path, `${path} must be a number from 0 to 1e6.`);
};
function checkPort(port: unknown, path: string): void {
  if (port === 'open') return;
  const number = (value: unknown, at: string): void => {
    if (typeof value === 'number' && Math.abs(value) <= 1e9) return;
    throw new InputError('not-finite', at, `${at} must be a number from −1e9 to 1e9, Pa.`);
  };
  checkFields(port, path, { pascals: number, reference: ['absolute', 'gauge'] });
}
const rules: FieldRules = {
  ...namedRules,
  ports: listOf(checkPort, 1, 1000),
  'portUncertainty?': volts,
  'supply?': volts,
  uncertainty: volts,
};

/** The readings of a recorded pump-down, each with the step that it is of. */
export interface ReadPumpDown {
  /** One for each held step, in order. */
  readonly readings: readonly PortReading[];
  /** The held steps: when, how high, how fast they drift. */
  readonly steps: readonly HeldStep[];
}

/**
 * The readings of a recorded pump-down: its held steps, each with what the gauge showed there.
 *
 * @param sweep The recording.
 * @param told What the gauge showed at each step, and what is known of the recorder.
 * @throws InputError `length-mismatch` where the recording holds another number of steps than the job names; `missing` where neither the recording
 * nor the job has the supply.
 *
 * @example
 * const time = Array.from({ length: 80 }, (_, i) => i / 10);
 * const sweep = { time: Float64Array.from(time), signal: Float64Array.from(time, (t) => (t < 4 ? 4 : 2.5)) };
 * const told = { file: 'a.csv', ports: ['open', { pascals: -34000, reference: 'gauge' }], supply: 5, uncertainty: 0.002 };
 * readPumpDown(sweep, told).readings.map(({ volts }) => volts) // => [4, 2.5]
 */
export function readPumpDown(sweep: Sweep, told: PumpDown): ReadPumpDown {
  checkReadable(sweep, 'sweep');
  checkSweep(sweep);
  checkFields(told, 'told', rules);
  checkReadable(told, 'told');
  const { file, ports, portUncertainty, supply, uncertainty } = told;
  const steps = heldSteps(sweep.time, sweep.signal);
  if (steps.length !== ports.length) {
    throw new InputError(
      'length-mismatch',
      file,
      `The recording holds ${steps.length} steps of a second or more, and the job names ${ports.length}; hold each step, and name each that is held.`,
    );
  }
  const readings = steps.map((step, i): PortReading => {
    const at = sweep.supply ? meanWithin(sweep.time, sweep.supply, step) : supply;
    if (at === undefined) {
      throw new InputError(
        'missing',
        `${file} supply`,
        'The recording has no supply and the job doesn’t say it; a ratiometric sensor can’t be judged without: record it, or give “supply”.',
      );
    }
    const port = ports[i]!;
    return {
      port,
      ...(port !== 'open' && portUncertainty !== undefined && { portUncertainty }),
      volts: step.volts,
      supply: at,
      uncertainty: Math.hypot(uncertainty, step.uncertainty),
    };
  });
  return { readings, steps };
}

function meanWithin(time: Float64Array, values: Float64Array, { start, end }: HeldStep): number {
  let [sum, count] = [0, 0];
  time.forEach((at, i) => {
    if (at < start || at > end || !Number.isFinite(values[i]!)) return;
    sum += values[i]!;
    count++;
  });
  return sum / count;
}
