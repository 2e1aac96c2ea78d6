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

/**
 * Floors that the scorer does not reach in every set yet, whose figures are printed all the same: spikes that a loose feed
 * lead takes close to a lifted wiper's level, steps that lead to it, and with these the travel.
 */
export const notYetReached: readonly string[] = [
  'recall of spike',
  'recall of step',
  'precision of spike',
  'precision of step',
  'findings below visibility',
  '95th percentile of travel error',
];

export function holds({ value, side, limit }: Floor): boolean {
  return side === 'most' ? value <= limit : value >= limit;
}
