import type { FieldRules } from '../fields.js';
import { between } from '../guard.js';
import type { Celsius, Ohms } from '../units.js';
import { type Conductor, checkConductor } from './conductor.js';

/** A winding's resistance at one temperature, and what its wire is of. */
export interface Winding {
  /** Resistance, Ω, from 10⁻⁶ to 10⁹. */
  readonly ohms: Ohms;
  /** The temperature at which it has that resistance, °C, −60 to 300; 20 when left out. */
  readonly at?: Celsius;
  /** What its wire is of; copper when left out. */
  readonly conductor?: Conductor;
}

/** Where the straight line of resistance over temperature is used, °C. */
export const coldest = -60;
export const hottest = 300;

export const someCelsius = between(coldest, hottest, '°C');
export const windingOhms = between(1e-6, 1e9, 'Ω');

/** At which temperature something of a winding is stated, and what its wire is of. */
export const wireRules: FieldRules = { 'at?': someCelsius, 'conductor?': checkConductor };

export const windingRules: FieldRules = { ohms: windingOhms, ...wireRules };
