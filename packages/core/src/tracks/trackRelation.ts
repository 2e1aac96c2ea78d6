import { medianAbsoluteDeviation } from '../statistics/medianAbsoluteDeviation.js';
import type { Volts } from '../units.js';
import { extent } from './extent.js';
import { type AlignedTracks, followed, type TrackRelation } from './twoTracks.js';

/** A relation with the scatter around it, V. */
export interface FittedRelation {
  readonly relation: TrackRelation;
  readonly scatter: Volts;
}

/** Samples are taken from this many equal levels of the first track, and no more than so many from each. */
const levels = 64;
const mostOfLevel = 200;

const kinds = ['sum', 'offset', 'ratio'] as const;

/**
 * The relation of two tracks around which the samples scatter least; a kind or a value that is known is kept.
 *
 * Method: medians and scaled median absolute deviations, which a minority of false samples can't move, over samples
 * spread evenly over the first track's levels, so that long rests don't outvote the movement between them.
 */
export function fitRelation(
  tracks: AlignedTracks,
  known: Partial<TrackRelation> = {},
): FittedRelation {
  const [first, second] = spread(tracks);
  const fits = kinds
    .filter((kind) => known.kind === undefined || kind === known.kind)
    .map((kind): FittedRelation => {
      const value = known.value ?? constant(kind, first, second);
      const relation = { kind, value };
      const { gain, shift } = followed(relation);
      const off = medianAbsoluteDeviation(second.map((at, i) => at - gain * first[i]! - shift));
      return { relation, scatter: Math.hypot(off.deviation, off.median) };
    });
  return fits.reduce((best, one) => (one.scatter < best.scatter ? one : best));
}

function constant(kind: TrackRelation['kind'], first: Float64Array, second: Float64Array): number {
  if (kind !== 'ratio') {
    const sign = kind === 'sum' ? 1 : -1;
    return medianAbsoluteDeviation(second.map((at, i) => at + sign * first[i]!)).median;
  }
  const most = Math.max(...extent(first.map(Math.abs)));
  const isLarge = (at: number): boolean => Math.abs(at) >= most / 2 && most > 0;
  const ratios = second.map((at, i) => at / first[i]!).filter((_, i) => isLarge(first[i]!));
  return ratios.length > 0 ? medianAbsoluteDeviation(ratios).median : 0;
}

/** Samples of both tracks spread over the first one's levels. */
function spread({ first, second }: AlignedTracks): readonly [Float64Array, Float64Array] {
  const [low, high] = extent(first);
  const levelOf = (at: number): number =>
    high > low ? Math.min(levels - 1, Math.floor((levels * (at - low)) / (high - low))) : 0;
  const counts = new Float64Array(levels);
  for (const at of first) counts[levelOf(at)]!++;
  const strides = counts.map((count) => Math.ceil(count / mostOfLevel));
  counts.fill(0);
  const isTaken = (at: number): boolean => {
    const level = levelOf(at);
    return counts[level]!++ % strides[level]! === 0;
  };
  const taken: number[] = [];
  first.forEach((at, i) => {
    if (isTaken(at)) taken.push(i);
  });
  return [Float64Array.from(taken, (i) => first[i]!), Float64Array.from(taken, (i) => second[i]!)];
}
