import { column, timeColumn } from '../column.js';
import { InputError } from '../errors.js';
import { checkExpectation } from '../expectation/checkExpectation.js';
import type { Expectation } from '../expectation/expectation.js';
import { checkFields, type FieldRules } from '../fields.js';
import { above0, between } from '../guard.js';
import { travelAt } from '../movement/throttleScale.js';
import type { Seconds, Volts } from '../units.js';
import { alignTracks } from './alignTracks.js';
import { extent } from './extent.js';
import { fitRelation } from './trackRelation.js';
import {
  type AlignedTracks,
  type Disagreement,
  followed,
  type NotCompared,
  type TrackRelation,
  type TracksComparison,
  type TwoTracks,
  type TwoTracksLike,
} from './twoTracks.js';
import { whichLies } from './whichLies.js';

/** What is known of two tracks beside their recording. */
export interface TracksEvidence {
  /** Largest deviation of the second track from what the first one tells that is still right, V; above 0. */
  readonly limit: Volts;
  /** What the two are meant to keep constant, with or without its value (V, or a ratio; −10⁶ to 10⁶); found from the data when left out. */
  readonly relation?: { readonly kind: TrackRelation['kind']; readonly value?: number };
  /** How much later than its stamps the second track was sampled, s, from −10⁶ to 10⁶, earlier if negative; 0 when left out. */
  readonly skew?: Seconds;
  /** The first track's hook-up, for its travel, where no travel was recorded. */
  readonly expected?: Expectation;
}

/**
 * Compares the two tracks of one housing: what they keep constant, where over the travel they deviate from that by
 * more than a limit, and which of the two departed where the recording shows it. This says how the tracks go together
 * and nothing of the linearity of either.
 *
 * Method: a relation by robust medians; a disagreement begins beyond the limit and ends where the deviation is back
 * inside by six times its scatter (at most to half the limit), so that noise does not cut it. The liar is the track that
 * bends abruptly at its beginning or end while the other moves on smoothly; else undecided.
 *
 * @param given Both signals with their time, and travel or supply where recorded.
 * @param evidence The limit and what else is known.
 * @throws InputError for columns of different lengths, a value that is no number, time that runs backwards, a limit of 0,
 * or `missing` where neither travel nor `expected` is given.
 *
 * @example
 * const time = Float64Array.from({ length: 1001 }, (_, i) => i / 1000);
 * const first = time.map((at) => 0.5 + 4 * at);
 * const second = time.map((at) => (at > 0.5 && at < 0.52 ? 0 : 4.5 - 4 * at));
 * const compared = compareTracks({ time, first, second, travel: time }, { limit: 0.2 });
 * compared.relation.kind // => 'sum'
 * compared.disagreements.length // => 1
 * compared.disagreements[0].fromTravel.toFixed(2) // => '0.50'
 * compared.liar // => 'second'
 */
export function compareTracks(
  given: TwoTracksLike,
  evidence: TracksEvidence,
): TracksComparison | NotCompared {
  const tracks = checked(given, evidence);
  const { limit, relation: known, skew = 0, expected } = evidence;
  const aligned = alignTracks(tracks, skew);
  const { time, first, second } = aligned;
  if (time.length === 0) return { kind: 'not-judged', reason: 'nothing-to-compare' };
  if (known?.value === undefined && Math.max(span(first), span(second)) <= 2 * limit) {
    return { kind: 'not-judged', reason: 'no-movement' };
  }
  const { relation, scatter } = fitRelation(aligned, known);
  const { gain, shift } = followed(relation);
  // A scaled median absolute deviation of 1.4826 times the limit has half of the samples beyond it. A dead track has a
  // constant ratio to anything: 0.
  const holds =
    (known !== undefined || scatter <= 1.4826 * limit) &&
    (known?.value !== undefined || Math.abs(gain) * span(first) > 2 * limit);
  if (!(Number.isFinite(scatter) && holds)) return { kind: 'not-judged', reason: 'no-relation' };
  const deviation = second.map((at, i) => at - gain * first[i]! - shift);
  const stretches = beyond(deviation, limit, limit - Math.min(limit / 2, 6 * scatter));
  const travel = aligned.travel ?? travelByFirst(aligned, expected as Expectation, stretches);
  const disagreements = stretches.map(([from, to]): Disagreement => {
    const [low, high] = extent(travel.subarray(from, to + 1));
    return {
      start: time[from]!,
      end: time[to]!,
      fromTravel: low,
      toTravel: high,
      deviation: deviation[largestOf(deviation, from, to)]!,
      liar: whichLies(aligned, [from, to], gain, limit, scatter),
    };
  });
  const largest = largestOf(deviation, 0, deviation.length - 1);
  const named = new Set(disagreements.map(({ liar }) => liar).filter((one) => one !== 'undecided'));
  const [liar = 'undecided'] = named.size === 1 ? named : [];
  return {
    kind: 'judged',
    relation,
    scatter,
    largest: { volts: deviation[largest]!, travel: travel[largest]!, time: time[largest]! },
    disagreements,
    liar,
    time,
    travel,
    deviation,
  };
}

const any = () => {};

const tracksRules: FieldRules = {
  time: any,
  first: any,
  second: any,
  'supply?': any,
  'travel?': any,
};

const evidenceRules: FieldRules = {
  limit: above0('V'),
  'relation?': {
    kind: ['sum', 'offset', 'ratio'],
    'value?': between(-1e6, 1e6),
  },
  'skew?': between(-1e6, 1e6, 's'),
  'expected?': (value, path) => checkExpectation(value as Expectation, path),
};

/** The tracks with Float64Arrays for columns; refuses what is none and evidence that isn't enough. */
function checked(given: TwoTracksLike, evidence: TracksEvidence): TwoTracks {
  checkFields(given, 'tracks', tracksRules);
  checkFields(evidence, 'evidence', evidenceRules);
  const time = timeColumn(given.time, 'tracks.time');
  const at = (name: 'first' | 'second' | 'supply' | 'travel') =>
    column(given[name], time.length, `tracks.${name}`);
  if (given.travel === undefined && evidence.expected === undefined) {
    throw new InputError(
      'missing',
      'evidence.expected',
      'Neither tracks.travel nor evidence.expected is given; one of them must tell the travel.',
    );
  }
  return {
    time,
    first: at('first'),
    second: at('second'),
    ...(given.supply !== undefined && { supply: at('supply') }),
    ...(given.travel !== undefined && { travel: at('travel') }),
  };
}

function span(values: Float64Array): Volts {
  const [low, high] = extent(values);
  return high - low;
}

function largestOf(deviation: Float64Array, from: number, to: number): number {
  let largest = from;
  for (let i = from; i <= to; i++) {
    if (Math.abs(deviation[i]!) > Math.abs(deviation[largest]!)) largest = i;
  }
  return largest;
}

/** Stretches, first and last sample, that begin beyond one limit and end inside another. */
function beyond(
  deviation: Float64Array,
  outer: Volts,
  inner: Volts,
): readonly (readonly [from: number, to: number])[] {
  const stretches: [number, number][] = [];
  let isBeyond = false;
  for (let i = 0; i < deviation.length; i++) {
    const size = Math.abs(deviation[i]!);
    if (size > (isBeyond ? inner : outer)) {
      if (isBeyond) stretches[stretches.length - 1]![1] = i;
      else stretches.push([i, i]);
      isBeyond = true;
    } else isBeyond = false;
  }
  return stretches;
}

/** Travel by the first track; through disagreements straight from the sample before to the one after. */
function travelByFirst(
  { time, first }: AlignedTracks,
  expected: Expectation,
  stretches: readonly (readonly [from: number, to: number])[],
): Float64Array {
  const travel = first.map((volts) => travelAt(expected, volts));
  for (const [from, to] of stretches) {
    const before = from > 0 ? from - 1 : to + 1;
    const after = to + 1 < time.length ? to + 1 : from - 1;
    if (before >= time.length || after < 0) continue;
    const lasted = time[after]! - time[before]!;
    for (let i = from; i <= to; i++) {
      const part = lasted > 0 ? (time[i]! - time[before]!) / lasted : 0;
      travel[i] = travel[before]! * (1 - part) + travel[after]! * part;
    }
  }
  return travel;
}
