import type { Seconds, Stretch, UnitThatFits, Verdict } from '@truesweep/core';
import type { Job, JobRecording } from '@truesweep/jobs';

/** A stretch of a recording, s. */
export interface TimeStretch {
  readonly start: Seconds;
  readonly end: Seconds;
}

/** A judged recording as the page shows it. */
export interface JudgedRecording {
  readonly name: string;
  readonly verdict: Verdict;
  /** What the verdict says of the sensor, and what it lacks. */
  readonly said: string;
  /** The units that its columns may be in, where they can't be in those that they were taken for. */
  readonly units: readonly UnitThatFits[];
  /** What became of it, where it comes from a report: whether it could be judged again, and how that compares. */
  readonly recheck?: string;
  /** What it comes to, as HTML that was made from data of the core alone. */
  readonly answer: string;
  /** What that rests on, the same way. */
  readonly evidence: string;
  readonly whole: TimeStretch;
  /** Nothing shorter than this is worth a look, s. */
  readonly shortest: Seconds;
  /** Where the findings lie, in the order of their numbers. */
  readonly findings: readonly TimeStretch[];
}

/** A value that a verdict rests on: what it is, and the value with its unit. */
export type RestsOnRow = readonly [label: string, text: string];

/** Recordings judged by a job. */
export interface Judged {
  readonly title: string;
  /** Where the verdicts are from, if not from files that were judged now. */
  readonly origin?: string;
  readonly restsOn: readonly RestsOnRow[];
  readonly recordings: readonly JudgedRecording[];
  /** The report, one HTML file. */
  readonly report: string;
  /** The job with these recordings, as a file holds it. */
  readonly jobText: string;
}

/** What recordings are judged by where no file says it. */
export interface GivenJob {
  readonly job?: Job;
  /** What was done when, in recordings of which the job says nothing. */
  readonly stretches: readonly Stretch[];
  /** How recordings are read; by what their files say when left out. */
  readonly text?: NonNullable<JobRecording['text']>;
}

/** What a page asks of its worker. */
export type Asked =
  /** To judge files by the job among them, else by `job`. */
  | { readonly kind: 'judge'; readonly files: readonly File[]; readonly given: GivenJob }
  /** To open a report: the one file. */
  | { readonly kind: 'open-report'; readonly files: readonly File[] }
  | {
      readonly kind: 'trace';
      readonly id: number;
      readonly recording: number;
      readonly stretch: TimeStretch;
    };

/** How far the judging is. */
export interface Progress {
  readonly name: string;
  readonly step: 'reading' | 'judging';
  /** How much of the file was read, 0 to 1. */
  readonly part: number;
}

/** What a worker answers. */
export type Answered =
  /** That it runs, and holds this lock until it ends. */
  | { readonly kind: 'alive'; readonly lock: string }
  | { readonly kind: 'progress'; readonly progress: Progress }
  | { readonly kind: 'judged'; readonly judged: Judged; readonly job: Job }
  /** A job alone. */
  | { readonly kind: 'opened'; readonly job: Job }
  /** What is wrong, and what would be right. */
  | { readonly kind: 'refused'; readonly refusal: string }
  | { readonly kind: 'trace'; readonly id: number; readonly svg: string };
