import { InputError } from '../errors.js';
import type { Celsius, Ohms } from '../units.js';
import { checkLaw, rangeOf, someOhms, zero } from './checkLaw.js';
import type { ThermistorLaw } from './law.js';
import { lnOhms, type OfRow } from './lnOhms.js';

/**
 * The temperature at which a thermistor has a resistance.
 *
 * @param law The sensor's law.
 * @param ohms Ω, among those that it has in the range of the law.
 * @returns °C.
 * @throws InputError at `law…` or `ohms`; `out-of-range` with the range of resistances.
 *
 * @example
 * const law = { kind: 'table', rows: [{ temperature: 0, ohms: 5975 }, { temperature: 20, ohms: 2502 }] };
 * temperatureAt(law, 4000) // => ≈ 8.8698
 */
export function temperatureAt(law: ThermistorLaw, ohms: Ohms): Celsius {
  checkLaw(law, 'law');
  return temperatureOf(law, ohms, 'ohms');
}

/** {@link temperatureAt} by a law that was checked already. */
export function temperatureOf(law: ThermistorLaw, ohms: Ohms, path: string): Celsius {
  someOhms(ohms, path);
  const { lowest, highest } = rangeOf(law);
  const [most, least] = [lowest, highest].map((end) => Math.exp(lnOhms(law, end).value));
  // The ends themselves, whatever rounding makes of them.
  if (ohms === most) return lowest;
  if (ohms === least) return highest;
  if (ohms < most! && ohms > least!) return temperatureWithin(law, ohms);
  throw new InputError(
    'out-of-range',
    path,
    `${path} is ${ohms} Ω; in the range of the sensor's law it has ${least!.toPrecision(4)} to ${most!.toPrecision(4)} Ω, and nothing is extrapolated.`,
  );
}

/** {@link temperatureAt} of a resistance that the law has. */
export function temperatureWithin(
  law: ThermistorLaw,
  ohms: Ohms,
  ofRow: OfRow = ({ ohms: nominal }) => nominal,
): Celsius {
  const value = Math.log(ohms);
  if (law.kind === 'steinhart-hart') {
    return 1 / (law.a + law.b * value + law.c * value ** 3) - zero;
  }
  if (law.kind === 'b') {
    return 1 / (1 / (law.from + zero) + Math.log(ohms / law.ohms) / law.b) - zero;
  }
  const { rows } = law;
  const next = rows.findIndex((row) => ofRow(row) <= ohms);
  const from = rows[Math.max(next, 1) - 1]!;
  const { b } = lnOhms(law, rows[Math.max(next, 1)]!.temperature, ofRow);
  return 1 / (1 / (from.temperature + zero) + Math.log(ohms / ofRow(from)) / b) - zero;
}
