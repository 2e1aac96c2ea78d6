import type { Recorder, Score, Stretch, Sweep, UnreadRows } from '@truesweep/core';
import type { Job, RecordingIdentity } from '@truesweep/jobs';

/** A recording as a report names it, so that another person can tell whether theirs is the same. */
export interface NamedRecording extends RecordingIdentity {
  readonly name: string;
  /** How the file was read, as a sentence. */
  readonly howRead: string;
  /** What was known of the recorder, where the file told more than the job. */
  readonly recorder?: Recorder;
}

/** A judged recording that a report is to be made of. */
export interface ReportRecording extends NamedRecording {
  readonly sweep: Sweep;
  readonly score: Score;
}

/** What a report is made of. */
export interface Report {
  readonly job: Job;
  /** When the report was written, ISO 8601. */
  readonly writtenAt: string;
  readonly recordings: readonly ReportRecording[];
}

/** The lowest and highest readings over time that a report keeps of a sweep, however long it was. */
export interface StoredEnvelope {
  /** First and last time, s. */
  readonly start: number;
  readonly end: number;
  /** Into how many equal columns that time is parted. */
  readonly columns: number;
  readonly column: readonly number[];
  readonly low: readonly number[];
  readonly high: readonly number[];
}

/** A recording as a report keeps it. */
export interface StoredRecording extends NamedRecording {
  readonly score: Score;
  readonly envelope: StoredEnvelope;
  /** What was done to the sensor when, where the job says it. */
  readonly stretches?: readonly Stretch[];
  /** Rows without a reading. */
  readonly unread?: readonly UnreadRows[];
  /** All samples, where they were few enough: 64-bit floating point numbers, little-endian, in base 64. */
  readonly samples?: { readonly time: string; readonly signal: string; readonly supply?: string };
}

/** What a report holds for programs. */
export interface StoredReport {
  readonly kind: 'truesweep-report';
  readonly version: 1;
  readonly writtenAt: string;
  readonly job: Job;
  readonly recordings: readonly StoredRecording[];
}
