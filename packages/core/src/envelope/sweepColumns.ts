import { sweepRules } from '../capture/checkSweep.js';
import type { SweepLike } from '../capture/sweep.js';
import { checkFields } from '../fields.js';
import type { Seconds } from '../units.js';
import { drawingEnvelope } from './drawingEnvelope.js';
import { type EnvelopeColumns, envelopeColumns } from './envelopeColumns.js';

/** The columns of a whole sweep, and the stretch that they are of. */
export interface SweepColumns extends EnvelopeColumns {
  /** Time at the first column's left edge, s; any. */
  readonly start: Seconds;
  /** Time at the last column's right edge, s; not before `start`. */
  readonly end: Seconds;
}

/** A sweep whose stamps are all one is drawn as this long. */
const shortest: Seconds = 1e-6;

/**
 * The lowest and the highest signal in each of a number of equal columns over a whole sweep; see {@link envelopeColumns}.
 *
 * @param columns 1 to 100,000.
 * @throws InputError for columns of different lengths, a value that is no number or time that runs backwards.
 *
 * @example
 * const sweep = { time: Float64Array.of(0, 1, 7, 8), signal: Float64Array.of(3, 1, 4, 2) };
 * sweepColumns(sweep, 4).high // => Float64Array [3, 4]
 * sweepColumns(sweep, 4).end // => 8
 */
export function sweepColumns(given: SweepLike, columns: number): SweepColumns {
  checkFields(given, 'sweep', sweepRules);
  const envelope = drawingEnvelope(given.time, given.signal);
  const { time } = envelope;
  const start = time[0]!;
  const end = Math.max(time.at(-1)!, start + shortest);
  return { start, end, ...envelopeColumns(envelope, start, end, columns) };
}
