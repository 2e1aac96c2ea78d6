import type { Score, Seconds, Stretch, UnitThatFits, Verdict, Volts } from '@truesweep/core';
import type { Job, JobRecording } from '@truesweep/jobs';
import type { FilingRecord } from '@truesweep/report';
import type { ViewBounds } from './view.js';

/** A stretch of a recording, s. */
export interface TimeStretch {
  readonly start: Seconds;
  readonly end: Seconds;
}

/** What of a trace is drawn. */
export interface TraceWindow {
  readonly stretch: TimeStretch;
  /** The readings from foot to top, V; all of them when left out. */
  readonly volts?: { readonly low: Volts; readonly high: Volts };
  /** How wide its place is, px. */
  readonly width: number;
}

/** A judged recording as the page shows it. */
export interface JudgedRecording {
  readonly name: string;
  readonly verdict: Verdict;
  /** What the verdict says of the sensor, and what it lacks. */
  readonly said: string;
  /** Where the trouble lies: the first findings, each with its place and time. */
  readonly where: readonly string[];
  /** What it points to. */
  readonly why: readonly string[];
  /** What to do next, in order. */
  readonly next: readonly string[];
  /** How sure it is, and what else is to be minded about the verdict. */
  readonly sure: readonly string[];
  readonly score: Score;
  /** The file's hash, SHA-256. */
  readonly sha256: string;
  /** The units that its columns may be in, where they can't be in those that they were taken for. */
  readonly units: readonly UnitThatFits[];
  /** What became of it, where it comes from a report: whether it could be judged again, and how that compares. */
  readonly recheck?: string;
  /** What of it can be seen. */
  readonly bounds: ViewBounds;
  /** Whether its passes can be laid over one another. */
  readonly hasPasses: boolean;
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
  /** The job with these recordings, as a file holds it. */
  readonly jobText: string;
}

/** What recordings are judged by where no file says it. */
export interface GivenJob {
  readonly job?: Job;
  /** What was done when, in recordings of which the job says nothing. */
  readonly stretches: readonly Stretch[];
  /** How recordings are read; by what their files say when left out. */
  readonly text?: ReadBy['text'];
  readonly sound?: ReadBy['sound'];
}

/** How recordings are read, where the page was told. */
export type ReadBy = Pick<JobRecording, 'text' | 'sound'>;

/** What a file holds, as it is read. */
export interface Look {
  readonly name: string;
  /** Its first lines, field by field; none of a sound file. */
  readonly lines: readonly (readonly string[])[];
  /** Its headings by column, as far as it has any. */
  readonly headings: readonly string[];
  readonly isSound: boolean;
  /** What was read, or why nothing was. */
  readonly read:
    | {
        /** The columns of the times and of the readings, from 0; no time where the rate is told instead. */
        readonly timeColumn?: number;
        readonly signalColumn?: number;
        readonly timeUnit?: string;
        readonly signalUnit?: string;
        /** How it was read, as a sentence. */
        readonly howRead: string;
        /** How many samples, over which time, how fast, from what to what: in words. */
        readonly extent: string;
        /** The whole recording, small. */
        readonly svg: string;
      }
    | { readonly refusal: string };
}

/** What a page asks of its worker. */
export type Asked =
  /** To judge files by the job among them, else by `job`. */
  | { readonly kind: 'judge'; readonly files: readonly File[]; readonly given: GivenJob }
  /** To open a report: the one file. */
  | { readonly kind: 'open-report'; readonly files: readonly File[] }
  /** To say what files hold, before they are judged. */
  | {
      readonly kind: 'look';
      readonly files: readonly File[];
      readonly read: ReadBy;
      readonly width: number;
    }
  | {
      readonly kind: 'trace';
      readonly id: number;
      readonly recording: number;
      readonly window: TraceWindow;
    }
  /** To write what the judgement of a recording rests on. */
  | {
      readonly kind: 'evidence';
      readonly id: number;
      readonly recording: number;
      readonly width: number;
    }
  /** To write how the numbers of a recording come about. */
  | { readonly kind: 'working'; readonly id: number; readonly recording: number }
  /** To write the report of what was judged; with how the numbers come about as an appendix, or without. */
  | {
      readonly kind: 'report';
      readonly id: number;
      readonly record: FilingRecord;
      readonly working: boolean;
    }
  | {
      readonly kind: 'passes';
      readonly id: number;
      readonly recording: number;
      readonly width: number;
    };

/** What else the same worker does, in code that is loaded then: it watches a running recording for a page, or judges all of one for itself. Through the port the rest is asked and told. */
export type WatchAskedFor =
  | { readonly kind: 'watch'; readonly port: MessagePort }
  | { readonly kind: 'judge-so-far'; readonly port: MessagePort };

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
  | { readonly kind: 'looked'; readonly looks: readonly Look[] }
  /** A trace, or passes laid over one another, as SVG; evidence, as HTML; or the report, as one HTML file. */
  | { readonly kind: 'made'; readonly id: number; readonly text: string };
