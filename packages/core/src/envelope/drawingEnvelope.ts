import { column, timeColumn } from '../column.js';
import { checkFields, listOf } from '../fields.js';
import { finiteBetween } from '../guard.js';

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
export function drawingEnvelope(
  time: ArrayLike<number>,
  values: ArrayLike<number>,
): DrawingEnvelope {
  const stamps = timeColumn(time, 'time');
  const numbers = column(values, stamps.length, 'values');
  const { levels, end } = levelsOf(numbers.length);
  const low = new Float64Array(end).fill(Infinity);
  const high = new Float64Array(end).fill(-Infinity);
  for (let i = 0; i < numbers.length; i++) {
    const block = Math.floor(i / shortestBlock);
    const value = numbers[i]!;
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
  const envelope = { time: stamps, values: numbers, low, high, levels };
  whole.add(envelope);
  return envelope;
}

/** Envelopes that were made here or looked through once: a check of every sample would cost more than a drawing. */
const whole = new WeakSet<object>();

/** Where the levels of so many samples begin, and where the last one ends. */
function levelsOf(samples: number): { readonly levels: readonly number[]; readonly end: number } {
  const levels = [0];
  let size = Math.ceil(samples / shortestBlock);
  let end = size;
  for (; size > 1; end += size) {
    levels.push(end);
    size = Math.ceil(size / 2);
  }
  return { levels, end };
}

const any = () => {};

/** Refuses what is no envelope, or one whose parts don't belong together, when it first comes by. */
export function checkEnvelope(envelope: DrawingEnvelope): void {
  if (whole.has(envelope)) return;
  checkFields(envelope, 'envelope', { time: any, values: any, low: any, high: any, levels: any });
  const { time, values, low, high, levels } = envelope;
  timeColumn(time, 'envelope.time');
  column(values, time.length, 'envelope.values');
  const wanted = levelsOf(time.length);
  listOf(any, wanted.levels.length, wanted.levels.length)(levels, 'envelope.levels');
  levels.forEach((start, i) => {
    finiteBetween(start, wanted.levels[i]!, wanted.levels[i]!, `envelope.levels[${i}]`);
  });
  column(low, wanted.end, 'envelope.low');
  column(high, wanted.end, 'envelope.high');
  whole.add(envelope);
}
