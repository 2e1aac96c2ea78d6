import { checkFields, type FieldRules } from '../fields.js';
import { between } from '../guard.js';
import type { Amps, Celsius, Ohms, Quantity, Seconds, Volts, Watts } from '../units.js';
import { growth } from './growth.js';
import { someCelsius, type Winding, windingRules } from './winding.js';

/** A coil on a voltage. */
export interface FedCoil extends Winding {
  /** Its inductance, H, from 10⁻⁹ to 1000; nothing is said of what it stores when left out. */
  readonly henries?: Quantity<'H'>;
  /** What it is fed from, V, above 0 to 1000. */
  readonly volts: Volts;
  /** How warm the winding is, °C, −60 to 300. */
  readonly temperature: Celsius;
  /** How quickly the current is cut off when the circuit is opened, s, from 10⁻⁹ to 1; 10⁻⁶ when left out. */
  readonly openedIn?: Seconds;
}

/** What flows in a coil, and what opening its circuit sets free. */
export interface CoilCurrent {
  /** The winding's resistance at its temperature, Ω, above 0. */
  readonly ohms: Ohms;
  /** The current once it has risen, A, above 0. */
  readonly amps: Amps;
  /** What heats the winding then, W, above 0. */
  readonly watts: Watts;
  /** What only the inductance tells; left out where it isn't known. */
  readonly stored?: {
    /** Energy in the field, J, above 0. */
    readonly joules: Quantity<'J'>;
    /** The current's time constant, s, above 0: after 5 of them it is within 1 % of its last value. */
    readonly timeConstant: Seconds;
    /** The voltage that opening the circuit would make, V, above 0, were there nothing that limits it: it arcs at what opens it. */
    readonly kick: Volts;
  };
}

const rules: FieldRules = {
  ...windingRules,
  'henries?': between(1e-9, 1000, 'H'),
  volts: between(1e-6, 1000, 'V'),
  temperature: someCelsius,
  'openedIn?': between(1e-9, 1, 's'),
};

/**
 * The current in a coil at a voltage and a temperature, what it stores, and what opening it by hand would make.
 *
 * The kick is a caution, not a forecast: winding capacitance, an arc or a diode limit it. Never open a fed coil by hand, and never feed a coil
 * of a few ohms from a battery for more than an instant (common practice, no source); the machine's service manual says what may be fed.
 *
 * Method: I = U/R, E = ½·L·I², τ = L/R, V = L·ΔI/Δt; R at its temperature as in {@link resistanceAtTemperature}.
 *
 * @throws InputError at `coil…`.
 *
 * @example
 * const coil = coilCurrent({ ohms: 4, henries: 0.006, volts: 12, temperature: 20 });
 * coil.amps // => 3
 * coil.stored.joules // => ≈ 0.027
 * coil.stored.kick // => ≈ 18000
 */
export function coilCurrent(coil: FedCoil): CoilCurrent {
  checkFields(coil, 'coil', rules);
  const { henries, volts, temperature, openedIn = 1e-6 } = coil;
  const ohms = coil.ohms * growth(coil, temperature);
  const amps = volts / ohms;
  return {
    ohms,
    amps,
    watts: volts * amps,
    ...(henries !== undefined && {
      stored: {
        joules: (henries * amps * amps) / 2,
        timeConstant: henries / ohms,
        kick: (henries * amps) / openedIn,
      },
    }),
  };
}
