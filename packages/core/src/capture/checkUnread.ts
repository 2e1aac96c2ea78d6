import { checkFields, listOf } from '../fields.js';
import { between, finiteBetween, mostRecorded, wholeNumber } from '../guard.js';
import type { NoReading, UnreadRows } from './sweep.js';

const readings: readonly NoReading[] = ['above-range', 'below-range', 'none'];

/** Far beyond any recording. */
const mostRows = 1e9;

/**
 * Refuses rows without a reading that are none, or that do not stand between so many samples in their order.
 *
 * @throws InputError with the path of the field, such as `sweep.unread[2].rows`.
 */
export function checkUnread(unread: readonly UnreadRows[], samples: number, path: string): void {
  const one = (value: unknown, at: string): void => {
    checkFields(value, at, {
      reading: readings,
      rows: (rows, of) => void wholeNumber(rows, 1, mostRows, of),
      after: (after, of) => void wholeNumber(after, 0, samples, of),
      start: between(-mostRecorded, mostRecorded, 's'),
      end: between(-mostRecorded, mostRecorded, 's'),
    });
    const { start, end } = value as UnreadRows;
    finiteBetween(end, start, mostRecorded, `${at}.end`, 's');
  };
  listOf(one, 0, mostRows)(unread, path);
  for (let i = 1; i < unread.length; i++)
    wholeNumber(unread[i]!.after, unread[i - 1]!.after, samples, `${path}[${i}].after`);
}
