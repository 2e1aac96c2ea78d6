import { type Determined, isDetermined } from '../circuit/determined.js';
import type { Position } from '../units.js';
import type { Worst } from './worstCase.js';

/** How a worst value stands to its rating; a rating that was not given judges nothing. */
export type RatingOutcome =
  | 'within'
  | 'within-short-term'
  | 'over'
  /** Over the continuous rating; a short-term rating was not given. */
  | 'over-continuous'
  /** The circuit has no unique value there. */
  | 'undetermined'
  | 'not-given';

/** A worst value beside its ratings, all in one unit. */
export interface RatingCheck {
  /** The worst value, W of a power rating, A of a current rating. */
  readonly value: Determined<number>;
  /** Where the wiper stands then: fraction of the track, 0 to 1. */
  readonly position: Position;
  /** How it compares with the ratings. */
  readonly outcome: RatingOutcome;
  /**
   * The continuous rating, derated where it falls with the temperature, in the unit of `value`, 0 or more; left out where it was not
   * given.
   */
  readonly continuous?: number;
  /** What the part stands for a moment, in the unit of `value`, above 0; left out where it was not given. */
  readonly shortTerm?: number;
}

/** Compares a worst value with a continuous and a short-term rating; an unbounded value is over any. */
export function compareRating(
  { value, position }: Worst<number>,
  continuous: number | undefined,
  shortTerm: number | undefined,
): RatingCheck {
  const given = {
    ...(continuous !== undefined && { continuous }),
    ...(shortTerm !== undefined && { shortTerm }),
  };
  return { value, position, outcome: outcomeOf(value, continuous, shortTerm), ...given };
}

/** A value that is its rating but for this part of it, which computing rounds away, keeps it. */
const rounding = 1e-12;

const keeps = (size: number, rating: number): boolean => size <= rating * (1 + rounding);

function outcomeOf(
  value: Determined<number>,
  continuous: number | undefined,
  shortTerm: number | undefined,
): RatingOutcome {
  if (continuous === undefined) return 'not-given';
  if (!isDetermined(value) && value.kind !== 'unbounded') return 'undetermined';
  const size = isDetermined(value) ? value : Infinity;
  if (keeps(size, continuous)) return 'within';
  if (shortTerm === undefined) return 'over-continuous';
  return keeps(size, shortTerm) ? 'within-short-term' : 'over';
}
