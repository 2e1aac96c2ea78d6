import { checkFields } from '../fields.js';
import { between, finiteBetween } from '../guard.js';
import type { Volts } from '../units.js';
import { codeOf, entryOf, knownCodes } from './codeTable.js';

/** What a page says of a code: that it is set where the signal is below, or above, so many volts. */
export interface StatedCodeLimit {
  /** The code, one of those that `readTroubleCode` knows. */
  readonly code: string;
  /** Which side of the voltage sets it. */
  readonly set: 'below' | 'above';
  /** The voltage, V, 0 to the supply. */
  readonly volts: Volts;
  /** What the control unit's circuit is fed from, V, above 0 to 100; 5 when left out. */
  readonly supply?: Volts;
}

/** How a page's statement compares with what the code means. */
export interface CodeLimitComparison {
  /** It agrees; it gives the code of the other side; or it can't be told, because the code names no side or the limit doesn't. */
  readonly conclusion: 'agrees' | 'swapped' | 'cannot-tell';
  /** The code that such a limit belongs to; left out where it can't be told. */
  readonly code?: string;
}

/**
 * Whether a service page gives a code the right side of its limit: a code of a low input belongs to a signal below a limit in the lower half of the supply, one
 * of a high input to a signal above a limit in the upper half. A page that has them swapped sends one the wrong way: on a thermistor to ground low volts are hot or a short, high
 * volts cold or open.
 *
 * Source: the codes as in {@link readTroubleCode}; halves of the supply are common practice, no source.
 *
 * @throws InputError at `stated…`.
 *
 * @example
 * compareCodeLimit({ code: 'P0112', set: 'above', volts: 4.8 }) // => { conclusion: 'swapped', code: 'P0113' }
 * compareCodeLimit({ code: 'P0117', set: 'below', volts: 0.2 }) // => { conclusion: 'agrees', code: 'P0117' }
 */
export function compareCodeLimit(stated: StatedCodeLimit): CodeLimitComparison {
  checkFields(stated, 'stated', {
    code: knownCodes,
    set: ['below', 'above'],
    volts: between(0, 100, 'V'),
    'supply?': between(1e-3, 100, 'V'),
  });
  const { code, set, volts, supply = 5 } = stated;
  finiteBetween(volts, 0, supply, 'stated.volts', 'V');
  const { sensor, kind } = entryOf(code);
  const isSide = set === 'above' ? volts > supply / 2 : volts < supply / 2;
  if ((kind !== 'low' && kind !== 'high') || !isSide) return { conclusion: 'cannot-tell' };
  const right = codeOf(sensor, set === 'above' ? 'high' : 'low');
  return { conclusion: right === code ? 'agrees' : 'swapped', code: right };
}
