import { oneOf } from '../guard.js';
import { type CodedSensor, type CodeKind, entryOf, knownCodes } from './codeTable.js';

/** What a trouble code says. */
export interface ReadCode {
  /** The code, a letter and four digits. */
  readonly code: string;
  /** The sensor whose circuit it is about. */
  readonly sensor: CodedSensor;
  /** What the control unit noticed of the signal. */
  readonly kind: CodeKind;
  /**
   * What such a signal means where the sensor is sound: a thermistor lies between signal and ground, so that its low volts are hot or a short, and
   * its high volts cold or no connection. Left out for pressure, whose circuit differs from machine to machine, and where the code tells no level.
   */
  readonly means?: 'hot-or-shorted' | 'cold-or-open';
}

/**
 * What a standard trouble code of a temperature or pressure sensor says. A code names a circuit, not a part: whose fault it is tells {@link locateCodeFault}.
 *
 * Source: SAE J2012; P0112, P0113, P0117 and P0118 as service manuals quote it, the others from memory. They are those of road vehicles: the machine at
 * hand may use its own, and its service manual is right.
 *
 * @param code P0105 to P0109, manifold or barometric pressure; P0110 to P0114, air temperature; P0115 to P0119, coolant temperature.
 * @throws InputError `unknown-choice` at `code` for any other.
 *
 * @example
 * readTroubleCode('P0117') // => { code: 'P0117', sensor: 'coolant-temperature', kind: 'low', means: 'hot-or-shorted' }
 */
export function readTroubleCode(code: string): ReadCode {
  const entry = entryOf(oneOf(code, knownCodes, 'code'));
  const { sensor, kind } = entry;
  if (sensor === 'manifold-pressure' || (kind !== 'low' && kind !== 'high')) return { ...entry };
  return { ...entry, means: kind === 'low' ? 'hot-or-shorted' : 'cold-or-open' };
}
