import { checkFields } from '../fields.js';
import { finiteBetween } from '../guard.js';
import type { Celsius, Ohms } from '../units.js';
import { constantOf } from './conductor.js';
import { growth } from './growth.js';
import { coldest, hottest, type Winding, windingRules } from './winding.js';

/**
 * How warm a winding is, from its resistance now and that at a known temperature.
 *
 * Method: t₂ = (R₂/R₁)·(k + t₁) − k, IEC 60034 as an ohmmeter's manual quotes it; k by {@link conductorConstant}.
 *
 * @param ohms What the winding has now, the leads taken off, Ω.
 * @returns °C, −60 to 300.
 * @throws InputError at `winding…`; at `ohms` for what the winding would have only beyond −60 or 300 °C.
 *
 * @example
 * temperatureOfWinding({ ohms: 12 }, 13.4) // => ≈ 49.69
 */
export function temperatureOfWinding(winding: Winding, ohms: Ohms): Celsius {
  checkFields(winding, 'winding', windingRules);
  const { ohms: known, at = 20, conductor } = winding;
  // What rounding puts beyond an end is that end.
  const [low, high] = [known * growth(winding, coldest), known * growth(winding, hottest)];
  finiteBetween(ohms, low * (1 - 1e-12), high * (1 + 1e-12), 'ohms', 'Ω');
  const k = constantOf(conductor);
  const celsius = (ohms / known) * (k + at) - k;
  return Math.min(hottest, Math.max(coldest, celsius));
}
