import { InputError } from '../errors.js';
import { finiteBetween } from '../guard.js';
import type { Fraction, Ohms } from '../units.js';
import { checkInstrument } from './checkInstrument.js';
import type { Logger } from './instrument.js';

/**
 * What a multiplexed converter keeps of the channel before: the part of the difference between the two that is left when its sampling capacitor is
 * cut off, e^(−t/RC).
 *
 * @param sourceOhms What the converter looks back into: {@link sourceResistance} at the travel in question.
 * @throws InputError `missing` for a converter whose sampling isn't told.
 *
 * @example
 * const sampling = { ohms: 2000, farads: 14e-12, seconds: 1.5e-6 };
 * const logger = { kind: 'logger', name: 'board', inputOhms: 1e8, range: { low: 0, high: 5 }, bits: 10, interval: 1e-3, sampling } as const;
 * settlingError(logger, 1250) < 2 ** -11 // => true
 * settlingError(logger, 100e3) > 0.3 // => true
 */
export function settlingError(logger: Logger, sourceOhms: Ohms): Fraction {
  checkInstrument(logger, ['logger']);
  finiteBetween(sourceOhms, 0, 1e18, 'sourceOhms', 'Ω');
  const { sampling } = logger;
  if (!sampling) {
    throw new InputError(
      'missing',
      'instrument.sampling',
      'instrument.sampling is missing; give resistance, capacitance and time of the sampling switch.',
    );
  }
  const constant = (sourceOhms + sampling.ohms) * sampling.farads;
  return constant === 0 ? 0 : Math.exp(-sampling.seconds / constant);
}
