import { checkFields } from '../fields.js';
import { between, finiteBetween, positive } from '../guard.js';
import type { Pascals, Seconds, Volts } from '../units.js';
import { checkPressureSensor, withinRange } from './checkPressureSensor.js';
import { lineAt } from './pressureRatio.js';
import type { PressureSensor } from './pressureSensor.js';

/** Where a step was held. */
export interface StepPressure {
  /** The pressure at the port above the air around, Pa, not 0: below 0 for a vacuum. */
  readonly gauge: Pascals;
  /** The pressure of the air around, Pa, 10,000 to 120,000. */
  readonly station: Pascals;
  /** The supply of the sensor, V, above 0. */
  readonly supply: Volts;
}

/**
 * How fast a held step leaks, by its drift: the time in which the pressure at the port, above or below the air around, would fall to 37 %.
 *
 * Method: Δp = Δp₀·exp(−t/τ), so that τ = Δp over its fall in a second, by the sensor's slope there. Air that was pumped warms up again and looks like a
 * leak: of a step that was just pumped it says little. No source was found for a limit, so none is judged.
 *
 * @param sensor The sensor.
 * @param at Where the step was held.
 * @param drift How fast the output drifts, V/s, of `heldSteps`.
 * @returns τ, s; `Infinity` where it drifts away from the air's pressure, or not at all.
 * @throws InputError at `sensor…`, `at…` or `drift`.
 *
 * @example
 * const response = { kind: 'line', gain: 9e-6, offset: -0.095, lowest: 15000, highest: 115000 };
 * leakByDrift({ reference: 'absolute', response }, { gauge: -60000, station: 96000, supply: 5 }, 0.0045) // => ≈ 600
 */
export function leakByDrift(sensor: PressureSensor, at: StepPressure, drift: number): Seconds {
  checkPressureSensor(sensor, 'sensor');
  checkFields(at, 'at', {
    gauge: between(-1.2e5, 1e9, 'Pa'),
    station: between(1e4, 1.2e5, 'Pa'),
    supply: (value, path) => positive(value, path, 'V'),
  });
  finiteBetween(drift, -1e12, 1e12, 'drift', 'V/s');
  const { gauge, station, supply } = at;
  const pressure = sensor.reference === 'absolute' ? station + gauge : gauge;
  withinRange(sensor, pressure, 'at.gauge');
  const { gain } = lineAt(sensor, pressure);
  const perSecond = drift / supply / gain;
  return gauge * perSecond < 0 ? -gauge / perSecond : Infinity;
}
