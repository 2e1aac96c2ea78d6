import { kinds, type Measured, type Rate } from './measure.js';

/** A measured figure beside the floor that it must keep. */
export interface Floor {
  readonly name: string;
  readonly rate?: Rate;
  readonly value: number;
  /** `most`: no more than the limit; `least`: no less. */
  readonly side: 'most' | 'least';
  readonly limit: number;
}

/** The figures that the corpus must reach. */
export function floors(measured: Measured): readonly Floor[] {
  const of = (name: string, rate: Rate, side: Floor['side'], limit: number): Floor => ({
    name,
    rate,
    value: rate.of === 0 ? (side === 'most' ? 0 : 1) : rate.hits / rate.of,
    side,
    limit,
  });
  const { median, percentile95 } = measured.travelError;
  return [
    of('sound judged fail', measured.soundFailed, 'most', 0),
    of('sound judged marginal', measured.soundMarginal, 'most', 0.01),
    of('sound, adequate, judged inconclusive', measured.soundInconclusive, 'most', 0.03),
    of('visible fault passed', measured.visiblePassed, 'most', 0),
    ...kinds.map((kind) => of(`recall of ${kind}`, measured.recall[kind], 'least', 0.95)),
    ...kinds.map((kind) => of(`precision of ${kind}`, measured.precision[kind], 'least', 0.95)),
    of('findings below visibility', measured.below, 'most', 0),
    of('cause right', measured.cause, 'least', 0.92),
    { name: 'median travel error', value: median, side: 'most', limit: 0.005 },
    { name: '95th percentile of travel error', value: percentile95, side: 'most', limit: 0.02 },
    of('verdict right', measured.verdict, 'least', 0.97),
  ];
}

/** A floor that the scorer does not keep in every set yet, whose figure is printed all the same: noise takes a smaller one beyond it. */
export const notYetReached: readonly string[] = ['findings below visibility'];

/** Floors that a whole set must keep; of the fewer events in a part of it a single case may be a twentieth. */
export const ofWholeSets: readonly string[] = ['recall of step', '95th percentile of travel error'];

export function holds({ value, side, limit }: Floor): boolean {
  return side === 'most' ? value <= limit : value >= limit;
}
