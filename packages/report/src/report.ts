import type { Recorder, Score, Stretch, Sweep, UnreadRows } from '@truesweep/core';
import type { Working } from '@truesweep/explain/written';
import type { Job, RecordingIdentity } from '@truesweep/jobs';

/** A recording as a report names it, so that another person can tell whether theirs is the same. */
export interface NamedRecording extends RecordingIdentity {
  /** The file's name. */
  readonly name: string;
  /** How the file was read, as a sentence. */
  readonly howRead: string;
  /** What was known of the recorder, where the file told more than the job; left out elsewhere. */
  readonly recorder?: Recorder;
}

/** A judged recording that a report is to be made of. */
export interface ReportRecording extends NamedRecording {
  /** The samples. */
  readonly sweep: Sweep;
  /** What they were judged to say. */
  readonly score: Score;
  /** How the numbers come about, as of `explainScore`: an appendix of the report; none when left out. A report that is opened again holds none. */
  readonly workings?: readonly Working[];
}

/** What a report is filed by; each a line of text, left out where it is not known. */
export interface FilingRecord {
  /** The workshop's number of the job; not stated when left out. */
  readonly jobNumber?: string;
  /** The machine that the sensor belongs to; not stated when left out. */
  readonly machine?: string;
  /** The sensor's or the machine's serial number; not stated when left out. */
  readonly serial?: string;
  /** Whose it is; not stated when left out. */
  readonly customer?: string;
  /** Who tested it; not stated when left out. */
  readonly by?: string;
  /** When, in local time, as it is to be read; not stated when left out. */
  readonly at?: string;
}

/** What a report is made of. */
export interface Report {
  /** The job that they were judged by. */
  readonly job: Job;
  /** When the report was written, ISO 8601. */
  readonly writtenAt: string;
  /** What it is filed by; nothing when left out. */
  readonly record?: FilingRecord;
  /** The recordings, in the order to be shown. */
  readonly recordings: readonly ReportRecording[];
}

/** The lowest and highest readings over time that a report keeps of a sweep, however long it was. */
export interface StoredEnvelope {
  /** First time, s, on the recording's clock; any finite one. */
  readonly start: number;
  /** Last time, s; not before `start`. */
  readonly end: number;
  /** Into how many equal columns that time is parted, 1 or more. */
  readonly columns: number;
  /** Which columns hold samples, counted from 0, rising. */
  readonly column: readonly number[];
  /** Lowest reading in each of them, V. */
  readonly low: readonly number[];
  /** Highest reading in each of them, V. */
  readonly high: readonly number[];
}

/** A recording as a report keeps it. */
export interface StoredRecording extends NamedRecording {
  /** What the samples were judged to say. */
  readonly score: Score;
  /** The sweep for its drawing. */
  readonly envelope: StoredEnvelope;
  /** What was done to the sensor when; left out where the job doesn't say it. */
  readonly stretches?: readonly Stretch[];
  /** Rows without a reading; left out where there are none. */
  readonly unread?: readonly UnreadRows[];
  /** All samples: 64-bit floating point numbers, little-endian, in base 64; left out where they were too many. */
  readonly samples?: { readonly time: string; readonly signal: string; readonly supply?: string };
}

/** What a report holds for programs. */
export interface StoredReport {
  readonly kind: 'truesweep-report';
  readonly version: 1;
  /** When the report was written, ISO 8601. */
  readonly writtenAt: string;
  /** The job that the recordings were judged by. */
  readonly job: Job;
  /** What it is filed by; left out where nothing was said. */
  readonly record?: FilingRecord;
  /** The recordings, in the order they are shown. */
  readonly recordings: readonly StoredRecording[];
}
