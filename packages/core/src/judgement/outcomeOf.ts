import type { CheckOutcome } from '../score/score.js';

/**
 * What a distance to the nearer limit says: it fails beyond what is tolerated outside and conforms from the guard on inside. Between the two
 * it is marginal in a window of at least four times the expanded uncertainty; a narrower one can't tell.
 *
 * Method: guarded rejection, simple or guarded acceptance (JCGM 106:2012, 8.2 and 8.3; from memory).
 */
export const outcomeOf = (
  margin: number,
  width: number,
  expanded: number,
  tolerated: number,
  guard: number,
): CheckOutcome =>
  margin >= guard
    ? 'conforms'
    : margin < -tolerated
      ? 'fails'
      : margin >= -tolerated && 4 * expanded <= width
        ? 'marginal'
        : 'cannot-tell';
