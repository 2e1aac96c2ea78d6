import { checkFields, listOf } from '../fields.js';
import { above0, positive, refuse } from '../guard.js';
import type { Ohms, Volts } from '../units.js';

/** A pull-up found from the pairs of a service table. */
export interface FoundPullUp {
  /** Their mean, Ω, above 0. */
  readonly ohms: Ohms;
  /** What each pair says, Ω, in their order. */
  readonly each: readonly Ohms[];
  /** The lowest of them, Ω. */
  readonly low: Ohms;
  /** The highest of them, Ω. */
  readonly high: Ohms;
}

const pairs = listOf({ ohms: above0('Ω'), volts: above0('V') }, 1, 1000);

/**
 * The pull-up in a control unit, from a service table that gives resistances with the voltages they make.
 *
 * Method: R_p = R(V_s − V)/V of each pair.
 *
 * @param given Each resistance with its voltage, which must be below the supply.
 * @param supply What the pull-up is fed with, V, above 0.
 * @throws InputError at `given…` or `supply`.
 *
 * @example
 * const found = pullUpFromPairs([{ ohms: 2370, volts: 3.48 }, { ohms: 236, volts: 0.97 }], 5);
 * found.each.map(Math.round) // => [1035, 980]
 */
export function pullUpFromPairs(
  given: readonly { readonly ohms: Ohms; readonly volts: Volts }[],
  supply: Volts,
): FoundPullUp {
  pairs(given, 'given');
  positive(supply, 'supply', 'V');
  const each = given.map(({ ohms, volts }, i) => {
    checkFields({ volts }, `given[${i}]`, { volts: below(supply) });
    return (ohms * (supply - volts)) / volts;
  });
  const ohms = each.reduce((sum, one) => sum + one / each.length, 0);
  return { ohms, each, low: Math.min(...each), high: Math.max(...each) };
}

const below = (supply: Volts) => (value: unknown, path: string) => {
  if ((value as number) < supply) return;
  refuse(value, path, `below the supply, ${supply} V`, 'out-of-range');
};
