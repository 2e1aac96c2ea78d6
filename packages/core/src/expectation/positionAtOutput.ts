import { bisection } from '../bisection.js';
import { checkCircuit } from '../circuit/checkCircuit.js';
import type { Circuit } from '../circuit/circuit.js';
import { checkFields } from '../fields.js';
import { between } from '../guard.js';
import type { Position, Volts } from '../units.js';
import { outputFunction } from './outputFunction.js';
import { turningPoints } from './turningPoints.js';

/** A voltage as an instrument shows it. */
export interface Reading {
  /** V; −10⁶ to 10⁶. */
  readonly volts: Volts;
  /** How far the true voltage may be from it either way, V; 0 when left out. */
  readonly uncertainty?: Volts;
}

/** Where on the track the wiper stands for a reading, as far as the reading says so. */
export type PositionAtOutput =
  /** One place fits; `low` and `high` are where the reading's uncertainty ends, held within the track. */
  | {
      readonly kind: 'position';
      /** The place that fits: fraction of the track, 0 to 1. */
      readonly position: Position;
      /** The lowest place for the reading's uncertainty, 0 to 1. */
      readonly low: Position;
      /** The highest place for the reading's uncertainty, 0 to 1. */
      readonly high: Position;
    }
  /** The hook-up gives no such output anywhere, its uncertainty allowed; what it gives is `lowest` to `highest`. */
  | {
      readonly kind: 'impossible';
      /** The lowest output that the hook-up gives, V. */
      readonly lowest: Volts;
      /** The highest output that the hook-up gives, V. */
      readonly highest: Volts;
    }
  /** Two or more places give this output; rising. */
  | {
      readonly kind: 'ambiguous';
      /** Every place that gives it: fractions of the track, rising, 0 to 1. */
      readonly positions: readonly Position[];
    }
  /** The output is the same wherever the wiper stands. */
  | {
      readonly kind: 'insensitive';
      /** The output everywhere, V. */
      readonly volts: Volts;
    };

/** A stretch of the track over which the output only rises or only falls. */
interface Branch {
  readonly from: Position;
  readonly to: Position;
  readonly fromVolts: Volts;
  readonly toVolts: Volts;
}

type Output = (position: Position) => Volts;

/** Two places nearer than this are one: a reading at a turning point. */
const samePlace = 1e-7;

/**
 * The place of the wiper on the track that gives a reading on a hook-up.
 *
 * Method: the output's turning points (only a pull-up above the source's voltage or a current limit makes any)
 * part the track into stretches that only rise or only fall; each is bisected to the last figure.
 *
 * @param circuit The hook-up, in SI units.
 * @param reading What the instrument shows.
 * @throws InputError for a wrong circuit or reading, or `no-output` where the output floats or has no value.
 *
 * @example
 * const circuit = { source: { volts: 6 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * positionAtOutput(circuit, { volts: 2.5 }) // => { kind: 'position', position: 0.5, low: 0.5, high: 0.5 }
 * positionAtOutput(circuit, { volts: 5.5 }) // => { kind: 'impossible', lowest: 0, highest: 5 }
 */
export function positionAtOutput(circuit: Circuit, reading: Reading): PositionAtOutput {
  checkCircuit(circuit);
  checkReading(reading);
  const { volts, uncertainty = 0 } = reading;
  const output = outputFunction(circuit);
  const branches = branchesOf(output);
  const ends = branches.flatMap(({ fromVolts, toVolts }) => [fromVolts, toVolts]);
  const lowest = Math.min(...ends);
  const highest = Math.max(...ends);
  const rounding = 8 * Number.EPSILON * Math.max(Math.abs(lowest), Math.abs(highest));
  if (volts < lowest - uncertainty - rounding || volts > highest + uncertainty + rounding) {
    return { kind: 'impossible', lowest, highest };
  }
  if (highest - lowest <= 1e3 * rounding) return { kind: 'insensitive', volts: lowest };
  const held = Math.min(highest, Math.max(lowest, volts));
  const positions = distinct(
    branches
      .filter((branch) => reaches(branch, held - rounding, held + rounding))
      .map((branch) => placeOn(output, branch, held)),
  );
  if (positions.length > 1) return { kind: 'ambiguous', positions };
  const position = positions[0]!;
  if (uncertainty === 0) return { kind: 'position', position, low: position, high: position };
  const bounds = [volts - uncertainty, volts + uncertainty] as const;
  const spread = branches
    .filter((branch) => reaches(branch, ...bounds))
    .flatMap((branch) => bounds.map((at) => placeOn(output, branch, at)));
  return {
    kind: 'position',
    position,
    low: Math.min(position, ...spread),
    high: Math.max(position, ...spread),
  };
}

/** Refuses a reading without a finite voltage or with a negative uncertainty. */
export function checkReading(reading: Reading, path = 'reading'): void {
  checkFields(reading, path, {
    volts: between(-1e6, 1e6, 'V'),
    'uncertainty?': between(0, 1e6, 'V'),
  });
}

function branchesOf(output: Output): readonly Branch[] {
  const ends = [0, ...turningPoints(output, 0, 1), 1];
  return ends.slice(1).map((to, i) => {
    const from = ends[i]!;
    return { from, to, fromVolts: output(from), toVolts: output(to) };
  });
}

/** Whether some place of a stretch has an output between two voltages. */
function reaches({ fromVolts, toVolts }: Branch, low: Volts, high: Volts): boolean {
  return high >= Math.min(fromVolts, toVolts) && low <= Math.max(fromVolts, toVolts);
}

/** Bisects a stretch until no number lies between; held at its ends for an output beyond them. */
function placeOn(output: Output, { from, to, fromVolts, toVolts }: Branch, volts: Volts): Position {
  const rising = toVolts > fromVolts ? 1 : -1;
  if (rising * (volts - fromVolts) <= 0) return from;
  if (rising * (volts - toVolts) >= 0) return to;
  return bisection((at) => rising * (volts - output(at)) > 0, from, to)[1];
}

function distinct(positions: readonly Position[]): readonly Position[] {
  const rising = positions.toSorted((a, b) => a - b);
  return rising.filter((place, i) => i === 0 || place - rising[i - 1]! > samePlace);
}
