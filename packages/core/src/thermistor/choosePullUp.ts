import { InputError } from '../errors.js';
import { positive } from '../guard.js';
import type { Celsius, Ohms, Volts } from '../units.js';
import { checkLaw, withinLaw } from './checkLaw.js';
import { voltsPerLogOhms } from './divider.js';
import type { ThermistorLaw } from './law.js';
import { lnOhms, slopeWithin } from './lnOhms.js';

/** A pull-up that tells temperatures apart over a range as well as one can. */
export interface ChosenPullUp {
  /** Ω, above 0. */
  readonly ohms: Ohms;
  /** The change of voltage with temperature at both ends of the range, where it is least, V/K, without sign. */
  readonly slope: number;
}

/**
 * The pull-up whose voltage changes most with temperature where it changes least in a range, at its ends: a higher one loses at the hot
 * end, a lower one at the cold.
 *
 * Method: the slopes at both ends set equal: R_p = (s₂R₁ − s₁R₂)/(s₁ − s₂) with s = √(|α|·R), α = (dR/dT)/R; between the resistances of the ends.
 *
 * @param law The sensor's law.
 * @param from The cold end, °C, within the range of the law.
 * @param to The hot end, °C, above it.
 * @param supply What the pull-up will be fed with, V, above 0.
 * @throws InputError at the argument that is wrong.
 *
 * @example
 * const law = { kind: 'b', b: 3640, ohms: 2044, from: 25, to: 100, lowest: -20 };
 * choosePullUp(law, 0, 100, 5).ohms // => ≈ 674.03
 */
export function choosePullUp(
  law: ThermistorLaw,
  from: Celsius,
  to: Celsius,
  supply: Volts,
): ChosenPullUp {
  checkLaw(law, 'law');
  withinLaw(law, from, 'from');
  withinLaw(law, to, 'to');
  positive(supply, 'supply', 'V');
  if (!(from < to)) {
    throw new InputError(
      'out-of-order',
      'to',
      `to is ${to} °C; it must be above from, ${from} °C.`,
    );
  }
  const [cold, hot] = [from, to].map((temperature) => {
    const ohms = Math.exp(lnOhms(law, temperature).value);
    const slope = Math.abs(slopeWithin(law, temperature));
    return { ohms, slope, root: Math.sqrt(slope * ohms) };
  }) as [End, End];
  const equal = (hot.root * cold.ohms - cold.root * hot.ohms) / (cold.root - hot.root);
  const ohms = equal > 0 ? Math.min(cold.ohms, Math.max(hot.ohms, equal)) : hot.ohms;
  const slope = Math.min(
    ...[cold, hot].map((end) => voltsPerLogOhms({ supply, pullUp: ohms }, end.ohms) * end.slope),
  );
  return { ohms, slope };
}

interface End {
  readonly ohms: Ohms;
  readonly slope: number;
  readonly root: number;
}
