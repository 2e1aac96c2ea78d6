import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { finiteBetween } from '../guard.js';
import type { Fraction, Position, Volts } from '../units.js';
import { outputFunction } from './outputFunction.js';

/** How far the parts may be from their nominal values; each 0 when left out. */
export interface Tolerances {
  /** Of the source's voltage, ± fraction. */
  readonly source?: Fraction;
  /** Of the limiter, ± fraction. */
  readonly limiter?: Fraction;
  /** Of the track's resistance, ± fraction. */
  readonly track?: Fraction;
  /** Of the pull-down, ± fraction. */
  readonly pullDown?: Fraction;
  /** Of the wiper's place at the closed stop, ± fraction of the track. */
  readonly closedPosition?: Position;
  /** Of the wiper's place at the open stop, ± fraction of the track. */
  readonly openPosition?: Position;
}

/** Between which voltages a sound sensor's reading lies, V. */
export interface ReadingWindow {
  readonly low: Volts;
  readonly nominal: Volts;
  readonly high: Volts;
}

/** The windows for the readings at both stops. */
export interface ExpectedWindows {
  readonly closed: ReadingWindow;
  readonly open: ReadingWindow;
}

/**
 * The windows for the closed and the open reading, from electrical and travel tolerances alone; the
 * instrument's uncertainty belongs to the decision, not in here.
 *
 * Method: the exact extremes over all corners of the tolerances. The output of a resistive network is a
 * quotient of two straight lines in each resistance, so its extremes lie at corners; over the wiper's
 * position that holds too unless there is a pull-up, where the interior is searched as well.
 *
 * @throws InputError for a wrong circuit or a tolerance outside 0 to 1.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000, closedPosition: 0.1 }, load: {} };
 * expectedWindows(circuit, { closedPosition: 0.01 }).closed.high.toFixed(3) // => '0.550'
 */
export function expectedWindows(circuit: Circuit, tolerances: Tolerances = {}): ExpectedWindows {
  checkCircuit(circuit);
  for (const [name, value] of Object.entries(tolerances)) {
    if (value !== undefined) finiteBetween(value, 0, 1, `tolerances.${name}`);
  }
  const corners = circuitCorners(circuit, tolerances);
  return {
    closed: windowAt(
      circuit,
      corners,
      positionAt(circuit.sensor, 0),
      tolerances.closedPosition ?? 0,
    ),
    open: windowAt(circuit, corners, positionAt(circuit.sensor, 1), tolerances.openPosition ?? 0),
  };
}

/** Every combination of the parts at the ends of their tolerances. */
function circuitCorners(circuit: Circuit, tolerances: Tolerances): readonly Circuit[] {
  let corners: readonly Circuit[] = [circuit];
  const spread = (
    tolerance: Fraction | undefined,
    change: (at: Circuit, factor: number) => Circuit,
  ) => {
    if (!tolerance) return;
    corners = corners.flatMap((at) => [change(at, 1 - tolerance), change(at, 1 + tolerance)]);
  };
  spread(tolerances.source, (at, factor) => ({
    ...at,
    source: { ...at.source, volts: at.source.volts * factor },
  }));
  spread(tolerances.limiter, (at, factor) => ({ ...at, limiter: at.limiter * factor }));
  spread(tolerances.track, (at, factor) => ({
    ...at,
    sensor: { ...at.sensor, track: at.sensor.track * factor },
  }));
  const { pullDown } = circuit.load;
  if (pullDown !== undefined) {
    spread(tolerances.pullDown, (at, factor) => ({
      ...at,
      load: { ...at.load, pullDown: pullDown * factor },
    }));
  }
  return corners;
}

function windowAt(
  circuit: Circuit,
  corners: readonly Circuit[],
  position: Position,
  tolerance: Position,
): ReadingWindow {
  const from = Math.max(0, position - tolerance);
  const to = Math.min(1, position + tolerance);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const corner of corners) {
    const output = outputFunction(corner);
    for (const volts of extremes(output, from, to, circuit.load.pullUp !== undefined)) {
      low = Math.min(low, volts);
      high = Math.max(high, volts);
    }
  }
  return { low, nominal: outputFunction(circuit)(position), high };
}

function extremes(
  output: (at: Position) => Volts,
  from: Position,
  to: Position,
  bent: boolean,
): readonly Volts[] {
  if (from === to) return [output(from)];
  const ends = [output(from), output(to)];
  if (!bent) return ends;
  return [
    ...ends,
    output(turningPoint(output, from, to, 1)),
    output(turningPoint(output, from, to, -1)),
  ];
}

/** Golden-section search for the highest (sign 1) or lowest (sign −1) output between two places. */
function turningPoint(
  output: (at: Position) => Volts,
  from: Position,
  to: Position,
  sign: 1 | -1,
): Position {
  const golden = (Math.sqrt(5) - 1) / 2;
  let low = from;
  let high = to;
  while (high - low > 1e-9) {
    const left = high - golden * (high - low);
    const right = low + golden * (high - low);
    if (sign * output(left) < sign * output(right)) low = left;
    else high = right;
  }
  return (low + high) / 2;
}
