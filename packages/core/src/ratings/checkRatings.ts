import type { Circuit } from '../circuit/circuit.js';
import { checkFields, type FieldRules } from '../fields.js';
import { compareRating, type RatingCheck } from './compareRating.js';
import {
  type CurrentRating,
  celsius,
  currentRules,
  deratingFactor,
  type PowerRating,
  powerRules,
  type Ratings,
} from './ratings.js';
import { worstCase } from './worstCase.js';

/** Each part's worst case beside its rating. */
export interface RatingChecks {
  /** W, as though the whole track carried the current of its hottest piece. */
  readonly track: RatingCheck;
  /** A. */
  readonly wiper: RatingCheck;
  /** W. */
  readonly limiter: RatingCheck;
  /** A. */
  readonly source: RatingCheck;
}

const ratingsRules: FieldRules = {
  'track?': powerRules,
  'wiper?': currentRules,
  'limiter?': powerRules,
  'source?': currentRules,
  'ambient?': celsius,
};

/** Refuses ratings that are no numbers above 0, and those of no known part, by path. */
export function checkRatingValues(ratings: Ratings): void {
  checkFields(ratings, 'ratings', ratingsRules);
}

type Limits = readonly [number | undefined, number | undefined];

/** Compares the worst case of a checked circuit, over all wiper positions, with the ratings. */
export function checkRatings(circuit: Circuit, ratings: Ratings): RatingChecks {
  const worst = worstCase(circuit);
  const power = (rating: PowerRating | undefined, path: string): Limits => {
    if (!rating) return [undefined, undefined];
    const factor = deratingFactor(rating, ratings.ambient, path);
    const { watts, shortTerm } = rating;
    return [watts * factor, shortTerm === undefined ? undefined : shortTerm * factor];
  };
  const current = (rating: CurrentRating | undefined): Limits => [rating?.amps, rating?.shortTerm];
  const compare = (which: keyof RatingChecks, [continuous, shortTerm]: Limits) =>
    compareRating(worst[which], continuous, shortTerm);
  return {
    track: compare('track', power(ratings.track, 'ratings.track')),
    wiper: compare('wiper', current(ratings.wiper)),
    limiter: compare('limiter', power(ratings.limiter, 'ratings.limiter')),
    source: compare('source', current(ratings.source)),
  };
}
