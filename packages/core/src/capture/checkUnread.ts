import { finiteBetween, oneOf, wholeNumber } from '../guard.js';
import type { NoReading, UnreadRows } from './sweep.js';

const readings: readonly NoReading[] = ['above-range', 'below-range', 'none'];

/** Far beyond any recording. */
const most = 1e12;
const mostRows = 1e9;

/**
 * Refuses rows without a reading that are none, or that do not stand between so many samples in their order.
 *
 * @throws InputError with the path of the field, such as `sweep.unread[2].rows`.
 */
export function checkUnread(unread: readonly UnreadRows[], samples: number, path: string): void {
  unread.forEach(({ reading, rows, after, start, end }, i) => {
    const at = `${path}[${i}]`;
    oneOf(reading, readings, `${at}.reading`);
    wholeNumber(rows, 1, mostRows, `${at}.rows`);
    wholeNumber(after, unread[i - 1]?.after ?? 0, samples, `${at}.after`);
    finiteBetween(start, -most, most, `${at}.start`, 's');
    finiteBetween(end, start, most, `${at}.end`, 's');
  });
}
