import { checkFields } from '../fields.js';
import { between, positive } from '../guard.js';
import type { Pascals, Seconds, Volts } from '../units.js';
import { checkPressureSensor, withinRange } from './checkPressureSensor.js';
import type { HeldStep } from './heldSteps.js';
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
 * @param step The step, of which its drift is looked at.
 * @returns τ, s; `Infinity` where it drifts away from the air's pressure, or not at all.
 * @throws InputError at `sensor…`, `at…` or `step…`.
 *
 * @example
 * const response = { kind: 'line', gain: 9e-6, offset: -0.095, lowest: 15000, highest: 115000 };
 * const step = { start: 0, end: 30, volts: 1.4, uncertainty: 0.001, drift: 0.0045 };
 * leakOfStep({ reference: 'absolute', response }, { gauge: -60000, station: 96000, supply: 5 }, step) // => ≈ 600
 */
export function leakOfStep(sensor: PressureSensor, at: StepPressure, step: HeldStep): Seconds {
  checkPressureSensor(sensor, 'sensor');
  checkFields(at, 'at', {
    gauge: between(-1.2e5, 1e9, 'Pa'),
    station: between(1e4, 1.2e5, 'Pa'),
    supply: (value, path) => positive(value, path, 'V'),
  });
  const any = between(-1e12, 1e12);
  checkFields(step, 'step', { start: any, end: any, volts: any, uncertainty: any, drift: any });
  const { gauge, station, supply } = at;
  const pressure = sensor.reference === 'absolute' ? station + gauge : gauge;
  withinRange(sensor, pressure, 'at.gauge');
  const { gain } = lineAt(sensor, pressure);
  const perSecond = step.drift / supply / gain;
  return gauge * perSecond < 0 ? -gauge / perSecond : Infinity;
}
