import { column, timeColumn } from '../column.js';

/** Lowest and highest values of ever longer blocks of a recording, from which any stretch of it is drawn fast. */
export interface DrawingEnvelope {
  /** Stamps of the recording, s: the very array that was given. */
  readonly time: Float64Array;
  /** Values of the recording, in its own unit: the very array that was given. */
  readonly values: Float64Array;
  /** Lowest value of each block, level after level: blocks of 64 samples first, then of twice as many. */
  readonly low: Float64Array;
  /** Highest value of each block, as `low` has the lowest. */
  readonly high: Float64Array;
  /** Where each level begins in `low` and `high`: indices, rising from 0. */
  readonly levels: readonly number[];
}

/** Samples in the shortest block. */
export const shortestBlock = 64;

/**
 * Builds a pyramid of lowest and highest values over a recording, once; {@link envelopeColumns} then finds those of each pixel
 * column of any stretch.
 *
 * Time linear in the number of samples n. `low` and `high` hold n/32 numbers each; time and values are kept, not copied.
 *
 * @param time Time stamps, s, never decreasing; gaps and uneven steps are welcome.
 * @param values As many numbers: the signal, V, or whatever else is drawn.
 * @throws InputError for columns of different lengths, a value that is no number or time that runs backwards.
 *
 * @example
 * const time = Float64Array.from({ length: 1000 }, (_, i) => i / 1000);
 * const values = time.map((at) => (at === 0.5 ? 5 : 1));
 * const envelope = drawingEnvelope(time, values);
 * envelopeColumns(envelope, 0, 1, 4).high // => Float64Array [1, 1, 5, 1]
 */
export function drawingEnvelope(time: Float64Array, values: Float64Array): DrawingEnvelope {
  timeColumn(time, 'time');
  column(values, time.length, 'values');
  const levels = [0];
  let size = Math.ceil(values.length / shortestBlock);
  let end = size;
  for (; size > 1; end += size) {
    levels.push(end);
    size = Math.ceil(size / 2);
  }
  const low = new Float64Array(end).fill(Infinity);
  const high = new Float64Array(end).fill(-Infinity);
  for (let i = 0; i < values.length; i++) {
    const block = Math.floor(i / shortestBlock);
    const value = values[i]!;
    if (value < low[block]!) low[block] = value;
    if (value > high[block]!) high[block] = value;
  }
  levels.slice(1).forEach((start, below) => {
    for (let from = levels[below]!; from < start; from++) {
      const to = start + ((from - levels[below]!) >> 1);
      if (low[from]! < low[to]!) low[to] = low[from]!;
      if (high[from]! > high[to]!) high[to] = high[from]!;
    }
  });
  return { time, values, low, high, levels };
}
