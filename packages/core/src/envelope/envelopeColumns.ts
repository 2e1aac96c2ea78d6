import { InputError } from '../errors.js';
import { finiteBetween, wholeNumber } from '../guard.js';
import type { Seconds } from '../units.js';
import { checkEnvelope, type DrawingEnvelope, shortestBlock } from './drawingEnvelope.js';

/** What the pixel columns of a drawing hold; a column without a sample (a gap) is left out. */
export interface EnvelopeColumns {
  /** Which columns hold samples, rising from 0. */
  readonly column: Uint32Array;
  /** Lowest value in each of them, in the unit of the values. */
  readonly low: Float64Array;
  /** Highest value in each of them, in the unit of the values. */
  readonly high: Float64Array;
}

/**
 * The lowest and the highest value in each of a number of equal columns over a stretch of time: every sample falls into
 * one column, so that a spike of a single sample shows, however long the recording.
 *
 * Column k of n holds from start + k/n of the stretch (inclusive) to start + (k + 1)/n (exclusive); the last one holds the end too.
 * Time in proportion to the number of columns and the logarithm of the number of samples.
 *
 * @param envelope As {@link drawingEnvelope} built it.
 * @param start Beginning of the stretch, s; may lie before the recording.
 * @param end Its end, s, after `start`; may lie behind the recording.
 * @param columns 1 to 100,000.
 * @throws InputError for a stretch or number of columns that is none.
 *
 * @example
 * const envelope = drawingEnvelope(Float64Array.of(0, 1, 7, 8), Float64Array.of(3, 1, 4, 2));
 * envelopeColumns(envelope, 0, 8, 4).low // => Float64Array [1, 2]
 * Array.from(envelopeColumns(envelope, 0, 8, 4).column) // => [0, 3]
 */
export function envelopeColumns(
  envelope: DrawingEnvelope,
  start: Seconds,
  end: Seconds,
  columns: number,
): EnvelopeColumns {
  checkEnvelope(envelope);
  finiteBetween(start, -1e12, 1e12, 'start', 's');
  finiteBetween(end, -1e12, 1e12, 'end', 's');
  wholeNumber(columns, 1, 100_000, 'columns');
  if (!(start < end)) {
    throw new InputError('out-of-range', 'end', `end is ${end} s; it must be after ${start} s.`);
  }
  const { time } = envelope;
  const column = new Uint32Array(columns);
  const low = new Float64Array(columns);
  const high = new Float64Array(columns);
  let count = 0;
  let from = firstWhere(time, 0, (at) => at >= start);
  for (let k = 0; k < columns && from < time.length; k++) {
    const edge = start + (end - start) * ((k + 1) / columns);
    const to =
      k + 1 < columns
        ? firstWhere(time, from, (at) => at >= edge)
        : firstWhere(time, from, (at) => at > end);
    if (to === from) continue;
    column[count] = k;
    [low[count], high[count]] = extremes(envelope, from, to);
    count++;
    from = to;
  }
  return {
    column: column.slice(0, count),
    low: low.slice(0, count),
    high: high.slice(0, count),
  };
}

/** The first sample from `low` on that passes a test which all later ones pass too; their number if there is none. */
function firstWhere(time: Float64Array, low: number, passes: (at: Seconds) => boolean): number {
  let high = time.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (passes(time[middle]!)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The lowest and highest of the samples from one to before another: single ones at the ends, the longest blocks between. */
function extremes(
  { values, low, high, levels }: DrawingEnvelope,
  from: number,
  to: number,
): [low: number, high: number] {
  let [lowest, highest] = [Infinity, -Infinity];
  for (let i = from; i < to; ) {
    let length = 1;
    let [bottom, top] = [values[i]!, values[i]!];
    if (i % shortestBlock === 0 && i + shortestBlock <= to) {
      let level = 0;
      let block = i / shortestBlock;
      length = shortestBlock;
      while (block % 2 === 0 && i + 2 * length <= to) {
        block /= 2;
        length *= 2;
        level++;
      }
      const at = levels[level]! + block;
      [bottom, top] = [low[at]!, high[at]!];
    }
    if (bottom < lowest) lowest = bottom;
    if (top > highest) highest = top;
    i += length;
  }
  return [lowest, highest];
}
