import { column } from '../column.js';
import { InputError } from '../errors.js';
import { checkFields, type FieldRules, listOf } from '../fields.js';
import { between, finiteBetween } from '../guard.js';
import type { Stretch, Sweep } from './sweep.js';

const kinds: readonly Stretch['kind'][] = [
  'sweep',
  'rest',
  'harness-flexed',
  'housing-tapped',
  'warmed',
];

/** Far beyond any recording, and small enough that no square of it overflows. */
const most = 1e12;
const moment = between(-most, most, 's');

const any = () => {};

export const sweepRules: FieldRules = {
  time: any,
  signal: any,
  'supply?': any,
  'stretches?': listOf((value, path) => {
    checkFields(value, path, { kind: kinds, start: moment, end: moment });
    const { start, end } = value as Stretch;
    finiteBetween(end, start, most, `${path}.end`, 's');
  }),
};

/**
 * Refuses what is no sweep: no samples, columns of different lengths, a value that is no number, no duration, a
 * stretch that is none.
 *
 * @throws InputError with the path of the sample, such as `sweep.time[12]`.
 */
export function checkSweep(sweep: unknown): Sweep {
  checkFields(sweep, 'sweep', sweepRules);
  const given = sweep as Sweep;
  const time = column(given.time, undefined, 'sweep.time');
  if (time.length < 2) {
    throw new InputError(
      'too-few-samples',
      'sweep.time',
      `sweep.time holds ${time.length} samples; a sweep has 2 or more.`,
    );
  }
  const signal = column(given.signal, time.length, 'sweep.signal');
  const supply = given.supply && column(given.supply, time.length, 'sweep.supply');
  if (time.every((at) => at === time[0])) {
    throw new InputError(
      'no-duration',
      'sweep.time',
      'All samples bear one time; a sweep takes time.',
    );
  }
  return { ...given, time, signal, ...(supply && { supply }) };
}
