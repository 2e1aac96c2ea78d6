import { checkFields } from '../fields.js';
import { above0, between, finiteBetween } from '../guard.js';
import type { Farads, Ohms, Seconds, Volts } from '../units.js';

/** What is left on the signal when the wiper opens: the load, and the capacitance of cable and input. */
export interface OpenWiper {
  /** Where the signal stood when the wiper opened, V, any finite one. */
  readonly from: Volts;
  /** Where the load pulls it, V, any finite one. */
  readonly rest: Volts;
  /** The load's resistance, Ω, above 0: pull-down, pull-up and input in parallel. */
  readonly ohms: Ohms;
  /** Capacitance of cable and input together, F, above 0. */
  readonly farads: Farads;
}

/**
 * The signal a time after the wiper opened: an exponential from where it stood to the load's rest level, V.
 *
 * @param seconds Since it opened, 0 s or more.
 *
 * @example
 * openWiper({ from: 2, rest: 0, ohms: 10e6, farads: 100e-12 }, 1e-3).toFixed(4) // => '0.7358'
 */
export function openWiper(wiper: OpenWiper, seconds: Seconds): Volts {
  const { from, rest } = checked(wiper);
  finiteBetween(seconds, 0, 1e12, 'seconds', 's');
  return rest + (from - rest) * Math.exp(-seconds / timeConstant(wiper));
}

/**
 * How long a dropout must last for the signal to have gone a part of the way to the rest level: with a large load and a long cable a short
 * one hardly shows on any instrument.
 *
 * @param part Of the way, 0 up to, but not, 1.
 *
 * @example
 * openWiperReaches({ from: 2, rest: 0, ohms: 10e6, farads: 100e-12 }, 0.5).toExponential(3) // => '6.931e-4'
 */
export function openWiperReaches(wiper: OpenWiper, part: number): Seconds {
  finiteBetween(part, 0, 1 - 1e-15, 'part');
  return -timeConstant(checked(wiper)) * Math.log1p(-part);
}

function checked(wiper: OpenWiper): OpenWiper {
  const volts = between(-1e12, 1e12, 'V');
  checkFields(wiper, 'wiper', { from: volts, rest: volts, ohms: above0('Ω'), farads: above0('F') });
  return wiper;
}

function timeConstant({ ohms, farads }: OpenWiper): Seconds {
  return ohms * farads;
}
