import { checkUnread } from '../capture/checkUnread.js';
import type { Sweep, UnreadRows } from '../capture/sweep.js';
import { column } from '../column.js';

/**
 * Refuses a chunk whose columns are none, differ in length or hold what no recorder reads; an empty chunk is one.
 *
 * @throws InputError `missing`, `length-mismatch`, `not-finite` or `out-of-range`, with the path of the column or of
 * the sample in the chunk, such as `chunk.signal[12]`.
 */
export function checkChunk(
  time: unknown,
  signal: unknown,
  supply: unknown,
  unread: readonly UnreadRows[],
): Pick<Sweep, 'time' | 'signal' | 'supply'> {
  const isEmpty = (values: unknown): boolean =>
    (Array.isArray(values) || ArrayBuffer.isView(values)) &&
    (values as unknown as ArrayLike<unknown>).length === 0;
  const times = isEmpty(time) ? new Float64Array(0) : column(time, undefined, 'chunk.time');
  const beside = (values: unknown, name: string): Float64Array =>
    isEmpty(time) && isEmpty(values) ? times : column(values, times.length, `chunk.${name}`);
  checkUnread(unread, times.length, 'chunk.unread');
  return {
    time: times,
    signal: beside(signal, 'signal'),
    ...(supply !== undefined && { supply: beside(supply, 'supply') }),
  };
}
