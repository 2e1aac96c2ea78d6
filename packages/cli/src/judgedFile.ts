import type { Criteria, Score } from '@truesweep/core';
import type { DelimitedReading } from '@truesweep/recordings';

/** A recording with how it was read, its score, and the criteria that it was judged by. */
export interface JudgedFile {
  readonly file: string;
  readonly reading: DelimitedReading;
  readonly score: Score;
  readonly criteria: Criteria;
}
