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
  readonly value: Determined<number>;
  readonly position: Position;
  readonly outcome: RatingOutcome;
  readonly continuous?: number;
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

function outcomeOf(
  value: Determined<number>,
  continuous: number | undefined,
  shortTerm: number | undefined,
): RatingOutcome {
  if (continuous === undefined) return 'not-given';
  if (!isDetermined(value) && value.kind !== 'unbounded') return 'undetermined';
  const size = isDetermined(value) ? value : Infinity;
  if (size <= continuous) return 'within';
  if (shortTerm === undefined) return 'over-continuous';
  return size <= shortTerm ? 'within-short-term' : 'over';
}
