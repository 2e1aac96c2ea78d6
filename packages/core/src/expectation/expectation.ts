import type { Circuit } from '../circuit/circuit.js';
import type { Volts } from '../units.js';
import { type Curve, expectedCurve } from './expectedCurve.js';
import { type ExpectedWindows, expectedWindows } from './expectedWindows.js';
import { restLevelOf } from './restLevel.js';
import type { Tolerances } from './tolerances.js';

/** What the scorer must know of the hook-up: where a sound sensor's readings lie and where a lifted wiper's go. */
export interface Expectation {
  /** The nominal output over the travel. */
  readonly curve: Curve;
  /** Between which voltages a sound sensor reads at the stops. */
  readonly windows: ExpectedWindows;
  /**
   * The signal with the wiper lifted, V, from the lowest to the highest voltage of the hook-up; left out where nothing pulls it anywhere.
   */
  readonly restLevel?: Volts;
  /** The hook-up itself. */
  readonly circuit: Circuit;
}

/**
 * The curve and the windows of a hook-up and the level that its load pulls a lifted wiper to.
 *
 * @throws InputError for a wrong circuit or tolerance.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * expectation(circuit).restLevel // => 0
 */
export function expectation(circuit: Circuit, tolerances: Tolerances = {}): Expectation {
  const curve = expectedCurve(circuit);
  const windows = expectedWindows(circuit, tolerances);
  const restLevel = restLevelOf(circuit);
  return { curve, windows, circuit, ...(restLevel !== undefined && { restLevel }) };
}
