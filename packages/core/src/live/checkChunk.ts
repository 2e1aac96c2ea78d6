import { checkUnread } from '../capture/checkUnread.js';
import type { UnreadRows } from '../capture/sweep.js';
import { column } from '../column.js';

/**
 * Refuses a chunk whose columns are none, differ in length or hold what no recorder reads; an empty chunk is one.
 *
 * @throws InputError `missing`, `length-mismatch`, `not-finite` or `out-of-range`, with the path of the column or of
 * the sample in the chunk, such as `chunk.signal[12]`.
 */
export function checkChunk(
  time: Float64Array,
  signal: Float64Array,
  supply: Float64Array | undefined,
  unread: readonly UnreadRows[],
): void {
  const columns = { time, signal, ...(supply !== undefined && { supply }) };
  for (const [name, values] of Object.entries(columns)) {
    const isEmpty = values instanceof Float64Array && values.length === 0 && time.length === 0;
    if (!isEmpty) column(values, time?.length, `chunk.${name}`);
  }
  checkUnread(unread, time.length, 'chunk.unread');
}
