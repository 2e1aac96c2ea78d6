import type { Seconds, Travel, Volts } from '../units.js';

/** Two tracks in one housing, recorded together. */
export interface TwoTracks {
  /** Time stamps, s, never decreasing. */
  readonly time: Float64Array;
  /** Signal of the first track at each stamp, V. */
  readonly first: Float64Array;
  /** Signal of the second track at the same stamps, V. */
  readonly second: Float64Array;
  /** The voltage that feeds both, V, where it was recorded: a supply that sags moves both signals alike. */
  readonly supply?: Float64Array;
  /** Travel at each sample, where something other than the first track tells it. */
  readonly travel?: Float64Array;
}

/** Two tracks as they may be handed in: columns are copied once where they are not Float64Arrays already. */
export type TwoTracksLike = Readonly<Record<'time' | 'first' | 'second', ArrayLike<number>>> & {
  /** Voltages across the end terminals, V, 0 or more; not recorded when left out. */
  readonly supply?: ArrayLike<number>;
  /** Travel of the throttle, 0 to 1; not recorded when left out. */
  readonly travel?: ArrayLike<number>;
};

/** What stays constant as both tracks move: their sum, V, second less first, V, or second over first. */
export interface TrackRelation {
  /** Which of the three stays constant. */
  readonly kind: 'sum' | 'offset' | 'ratio';
  /** What it is: V of a sum or an offset, a ratio without unit; any. */
  readonly value: number;
}

/** Which track departed, as far as the recording shows it. */
export type Liar = 'first' | 'second' | 'undecided';

/** A stretch in which the tracks contradict each other. */
export interface Disagreement {
  /** When it begins, s. */
  readonly start: Seconds;
  /** When it ends, s; not before `start`. */
  readonly end: Seconds;
  /** Lowest travel passed in it, 0 to 1; without recorded travel by the samples beside it, where both agree. */
  readonly fromTravel: Travel;
  /** Highest travel passed in it, 0 to 1. */
  readonly toTravel: Travel;
  /** The largest deviation of the second track from what the first one tells, V. */
  readonly deviation: Volts;
  /** Which track the evidence speaks against, if any. */
  readonly liar: Liar;
}

/** How two tracks go together. */
export interface TracksComparison {
  readonly kind: 'judged';
  /** What stays constant as both move. */
  readonly relation: TrackRelation;
  /** Scatter of the deviation as a standard deviation, V, whatever a minority of samples says. */
  readonly scatter: Volts;
  /** The largest deviation, V, with where and when it stands. */
  readonly largest: { readonly volts: Volts; readonly travel: Travel; readonly time: Seconds };
  /** By time; none where the tracks agree throughout. */
  readonly disagreements: readonly Disagreement[];
  /** Which track all disagreements with evidence speak against. */
  readonly liar: Liar;
  /** Deviation of the second track from what the first one tells, V, over time and travel, of all samples compared. */
  readonly time: Float64Array;
  /** Travel at each sample that was compared, 0 to 1. */
  readonly travel: Float64Array;
  /** Deviation of the second track from what the first one tells there, V. */
  readonly deviation: Float64Array;
}

/** Tracks that can't be compared. */
export interface NotCompared {
  readonly kind: 'not-judged';
  /** Why, as a code. */
  readonly reason: /** Neither signal moved by more than twice the limit, so that any relation fits. */
    | 'no-movement'
    /** With none of the relations do most samples keep the limit; or one of the tracks stands still. */
    | 'no-relation'
    /** The skew leaves no time at which both were recorded, or the supply was gone. */
    | 'nothing-to-compare';
}

/** Both signals at the same instants; travel where it was recorded. */
export interface AlignedTracks {
  readonly time: Float64Array;
  readonly first: Float64Array;
  readonly second: Float64Array;
  readonly travel?: Float64Array;
}

/** How the second track follows from the first: second = gain · first + shift. */
export function followed({ kind, value }: TrackRelation): { gain: number; shift: Volts } {
  if (kind === 'ratio') return { gain: value, shift: 0 };
  return { gain: kind === 'sum' ? -1 : 1, shift: value };
}
