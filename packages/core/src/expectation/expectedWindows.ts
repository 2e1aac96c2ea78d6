import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { finiteBetween } from '../guard.js';
import type { Ohms, Travel, Volts } from '../units.js';
import { checkTolerances } from './checkTolerances.js';
import { outputFunction } from './outputFunction.js';
import { type Tolerances, tolerancedParts } from './tolerances.js';
import { turningPoints } from './turningPoints.js';

/** Between which voltages a sound sensor's reading lies, V. */
export interface ReadingWindow {
  /** The lowest reading of a sound sensor, V, any. */
  readonly low: Volts;
  /** The reading of the nominal parts, V, between `low` and `high`. */
  readonly nominal: Volts;
  /** The highest reading of a sound sensor, V, from `low` up. */
  readonly high: Volts;
}

/** The windows for the readings at both stops. */
export interface ExpectedWindows {
  /** At the closed stop. */
  readonly closed: ReadingWindow;
  /** At the open stop. */
  readonly open: ReadingWindow;
  /** Standard uncertainty of the instrument's reading, V, 0 or more: no part of the windows, it belongs to the decision. */
  readonly readingUncertainty: Volts;
}

/**
 * The windows for the closed and the open reading, from electrical and travel tolerances alone, with the
 * instrument's uncertainty beside them.
 *
 * Method: the exact extremes over all corners of the tolerances. The output of a resistive network is a
 * quotient of two straight lines in each resistance, so its extremes lie at corners. Wiper and track each
 * change two resistances at once: over the position and over the track the turning points inside count too.
 *
 * @param circuit The circuit, in SI units.
 * @param tolerances Fractions of the nominal values.
 * @param readingUncertainty Standard uncertainty of the instrument, V, handed through.
 * @throws InputError for a wrong circuit, or a tolerance outside 0 to 1.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000, closedPosition: 0.1 }, load: {} };
 * expectedWindows(circuit, { closedPosition: 0.01 }).closed.high.toFixed(3) // => '0.550'
 */
export function expectedWindows(
  circuit: Circuit,
  tolerances: Tolerances = {},
  readingUncertainty: Volts = 0,
): ExpectedWindows {
  checkCircuit(circuit);
  checkTolerances(tolerances);
  finiteBetween(readingUncertainty, 0, 1e6, 'readingUncertainty', 'V');
  const corners = toleranceCorners(circuit, tolerances);
  const [closed, open] = [0, 1].map((travel) => windowAt(circuit, corners, tolerances, travel));
  return { closed: closed!, open: open!, readingUncertainty };
}

/** Every combination of the parts at the ends of their tolerances. */
export function toleranceCorners(circuit: Circuit, tolerances: Tolerances): readonly Circuit[] {
  return tolerancedParts(circuit, tolerances).reduce<readonly Circuit[]>(
    (corners, { value, halfWidth, withValue }) =>
      corners.flatMap((at) => [withValue(at, value - halfWidth), withValue(at, value + halfWidth)]),
    [circuit],
  );
}

/** The extremes of the output over all corners, at a travel whose position is off by what both stops may be off. */
export function windowAt(
  circuit: Circuit,
  corners: readonly Circuit[],
  { closedPosition = 0, openPosition = 0, track = 0 }: Tolerances,
  travel: Travel,
): ReadingWindow {
  const position = positionAt(circuit.sensor, travel);
  const reach = closedPosition * (1 - travel) + openPosition * travel;
  const from = Math.max(0, position - reach);
  const to = Math.min(1, position + reach);
  let low = Infinity;
  let high = -Infinity;
  const look = (value: (at: number) => Volts, places: readonly number[]): void => {
    const volts = places.map(value);
    low = Math.min(low, ...volts);
    high = Math.max(high, ...volts);
  };
  for (const corner of corners) {
    const output = outputFunction(corner);
    look(output, [from, to]);
    if (from < to && canTurn(corner)) look(output, turningPoints(output, from, to));
    // Each corner with the least track stands for the one with the most as well.
    const least = corner.sensor.track;
    const most = circuit.sensor.track * (1 + track);
    for (const place of most > least ? [from, to] : []) {
      const ofTrack = (ohms: Ohms): Volts =>
        outputFunction({ ...corner, sensor: { ...corner.sensor, track: ohms } })(place);
      const slope = (ohms: Ohms): number => ofTrack(ohms + (most - least) / 1e4) - ofTrack(ohms);
      if (slope(least) * slope(most) < 0) look(ofTrack, turningPoints(ofTrack, least, most));
    }
  }
  return { low, nominal: outputFunction(circuit)(position), high };
}

/** With nothing but resistances to common the output only rises or falls over the track. */
function canTurn({ load, connection, faults, source }: Circuit): boolean {
  return Boolean(
    load.pullUp ||
      connection ||
      faults?.length ||
      source.currentLimit !== undefined ||
      load.common === 'sensor',
  );
}
