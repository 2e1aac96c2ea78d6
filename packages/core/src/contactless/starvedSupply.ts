import { checkFields, type FieldRules } from '../fields.js';
import { between } from '../guard.js';
import type { Amps, Ohms, Volts } from '../units.js';

/** An active sensor behind a limiting resistor. */
export interface LimitedSupply {
  /** What the resistor is fed from, V, above 0 to 100. */
  readonly supply: Volts;
  /** The resistor, Ω, 0 to 10⁹. */
  readonly limiter: Ohms;
  /** What the sensor takes, A, above 0 to 10. */
  readonly current: Amps;
  /** The lowest supply that the sensor works at, V, 0 to 100. */
  readonly least: Volts;
}

/** What a limiting resistor leaves to an active sensor. */
export interface StarvedSupply {
  /** What the resistor would drop at the sensor's current, V, 0 or more; more than the supply where it lets less current through. */
  readonly drop: Volts;
  /** What is left at the sensor, V, 0 or more. */
  readonly left: Volts;
  /** Whether that is less than it needs. */
  readonly starved: boolean;
  /** The largest resistor that leaves it enough, Ω, 0 or more; 0 where the supply itself is too low or just enough. */
  readonly largestLimiter: Ohms;
}

const rules: FieldRules = {
  supply: between(1e-3, 100, 'V'),
  limiter: between(0, 1e9, 'Ω'),
  current: between(1e-9, 10, 'A'),
  least: between(0, 100, 'V'),
};

/**
 * Whether a limiting resistor, which protects a potentiometer, starves an active sensor (Hall, inductive, pressure) that takes a current of its own.
 *
 * Method: Ohm's law at the stated current.
 *
 * @throws InputError at `limited…`.
 *
 * @example
 * starvedSupply({ supply: 5, limiter: 1000, current: 0.01, least: 4.5 }) // => { drop: 10, left: 0, starved: true, largestLimiter: 50 }
 */
export function starvedSupply(limited: LimitedSupply): StarvedSupply {
  checkFields(limited, 'limited', rules);
  const { supply, limiter, current, least } = limited;
  const drop = limiter * current;
  const left = Math.max(0, supply - drop);
  return {
    drop,
    left,
    starved: left < least,
    largestLimiter: Math.max(0, (supply - least) / current),
  };
}
