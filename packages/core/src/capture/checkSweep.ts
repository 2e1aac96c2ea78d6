import { column } from '../column.js';
import { InputError } from '../errors.js';
import { finiteBetween, oneOf, present } from '../guard.js';
import { checkUnread } from './checkUnread.js';
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

/**
 * Refuses what is no sweep: no samples, columns of different lengths, a value that is no number, no duration, a
 * stretch that is none.
 *
 * @throws InputError with the path of the sample, such as `sweep.time[12]`.
 */
export function checkSweep(sweep: Sweep): void {
  present(sweep, 'sweep', 'a recorded sweep { time, signal }');
  const { time, signal, supply, stretches, unread } = sweep;
  column(time, time?.length, 'sweep.time');
  if (time.length < 2) {
    throw new InputError(
      'too-few-samples',
      'sweep.time',
      `sweep.time holds ${time.length} samples; a sweep has 2 or more.`,
    );
  }
  column(signal, time.length, 'sweep.signal');
  if (supply !== undefined) column(supply, time.length, 'sweep.supply');
  if (time.every((at) => at === time[0])) {
    throw new InputError(
      'no-duration',
      'sweep.time',
      'All samples bear one time; a sweep takes time.',
    );
  }
  stretches?.forEach(({ kind, start, end }, i) => {
    const path = `sweep.stretches[${i}]`;
    oneOf(kind, kinds, `${path}.kind`);
    finiteBetween(start, -most, most, `${path}.start`, 's');
    finiteBetween(end, start, most, `${path}.end`, 's');
  });
  if (unread) checkUnread(unread, time.length, 'sweep.unread');
}
