import { column } from '../column.js';
import { InputError } from '../errors.js';
import { checkFields, type FieldRules, listOf } from '../fields.js';
import { between, finiteBetween, mostRecorded } from '../guard.js';
import { checkUnread } from './checkUnread.js';
import type { Stretch, Sweep, SweepLike } from './sweep.js';

const kinds: readonly Stretch['kind'][] = [
  'sweep',
  'rest',
  'harness-flexed',
  'housing-tapped',
  'warmed',
];

const moment = between(-mostRecorded, mostRecorded, 's');

const any = () => {};

export const sweepRules: FieldRules = {
  time: any,
  signal: any,
  'supply?': any,
  'stretches?': listOf((value, path) => {
    checkFields(value, path, { kind: kinds, start: moment, end: moment });
    const { start, end } = value as Stretch;
    finiteBetween(end, start, mostRecorded, `${path}.end`, 's');
  }),
  'unread?': any,
};

/**
 * Refuses what is no sweep: fewer than two samples, columns of different lengths, a value that is no number, no duration, a stretch that is
 * none, or an unknown field.
 *
 * @param sweep Its columns may be any lists of numbers between −10¹² and 10¹².
 * @returns The sweep with Float64Arrays for columns: its own where they are such already.
 * @throws InputError with the path of the sample, such as `sweep.time[12]`.
 *
 * @example
 * checkSweep({ time: [0, 1], signal: [0.5, 4.5] }).signal // => Float64Array [0.5, 4.5]
 */
export function checkSweep(sweep: SweepLike): Sweep {
  checkFields(sweep, 'sweep', sweepRules);
  const time = column(sweep.time, undefined, 'sweep.time');
  if (time.length < 2) {
    throw new InputError(
      'too-few-samples',
      'sweep.time',
      `sweep.time holds ${time.length} samples; a sweep has 2 or more.`,
    );
  }
  const signal = column(sweep.signal, time.length, 'sweep.signal');
  const supply = sweep.supply && column(sweep.supply, time.length, 'sweep.supply');
  if (time.every((at) => at === time[0])) {
    throw new InputError(
      'no-duration',
      'sweep.time',
      'All samples bear one time; a sweep takes time.',
    );
  }
  const { stretches, unread } = sweep;
  if (unread) checkUnread(unread, time.length, 'sweep.unread');
  return {
    time,
    signal,
    ...(supply && { supply }),
    ...(stretches && { stretches }),
    ...(unread && { unread }),
  };
}
