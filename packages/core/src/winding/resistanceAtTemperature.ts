import { checkFields } from '../fields.js';
import type { Celsius, Ohms } from '../units.js';
import { growth } from './growth.js';
import { someCelsius, type Winding, windingRules } from './winding.js';

/**
 * A winding's resistance at a temperature, from that at another.
 *
 * Method: R₂/R₁ = (k + t₂)/(k + t₁), IEC 60034 as an ohmmeter's manual quotes it; k by {@link conductorConstant}.
 *
 * @param temperature The winding's own, °C, −60 to 300: after a run a coil is hotter than what is around it.
 * @returns Ω, above 0.
 * @throws InputError at `winding…` or `temperature`.
 *
 * @example
 * resistanceAtTemperature({ ohms: 12 }, 80) // => ≈ 14.83
 * resistanceAtTemperature({ ohms: 12, at: 25, conductor: { kind: 'aluminium' } }, 25) // => 12
 */
export function resistanceAtTemperature(winding: Winding, temperature: Celsius): Ohms {
  checkFields(winding, 'winding', windingRules);
  someCelsius(temperature, 'temperature');
  return winding.ohms * growth(winding, temperature);
}
