import type { Criteria, Score, Sweep } from '@truesweep/core';
import type { DelimitedReading } from '@truesweep/recordings';

/** A recording with how it was read, its score, and the criteria that it was judged by. */
export interface JudgedFile {
  readonly file: string;
  /** Size of the file, bytes, and the SHA-256 of its bytes. */
  readonly bytes: number;
  readonly sha256: string;
  readonly sweep: Sweep;
  readonly reading: DelimitedReading;
  readonly score: Score;
  readonly criteria: Criteria;
}
