import type { Criteria, Expectation, InputError, Recorder, Score, Sweep } from '@truesweep/core';
import type { RecordingIdentity } from '@truesweep/jobs';
import type { DelimitedReading, SoundReading } from '@truesweep/recordings';

/** A recording with how it was read, its score, and the criteria that it was judged by. */
export interface JudgedFile extends RecordingIdentity {
  readonly file: string;
  readonly sweep: Sweep;
  readonly reading: DelimitedReading | SoundReading;
  readonly recorder: Recorder;
  readonly score: Score;
  readonly criteria: Criteria;
  readonly expected: Expectation;
}

/** A recording that could not be judged, and why. */
export interface RefusedFile {
  readonly file: string;
  readonly refusal: InputError;
}

/** What became of a recording. */
export type FileAnswer = JudgedFile | RefusedFile;
