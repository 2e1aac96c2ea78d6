import type {
  ClosedSetting,
  PinFinding,
  Score,
  SimulatedEvent,
  SweepComparison,
  TextPlace,
  Verdict,
} from '@truesweep/core';
import type { HistoryQuantity, SensorHistory } from '@truesweep/history';
import type { ExpectedOfKind } from '@truesweep/jobs';
import type { DelimitedReading, SoundReading } from '@truesweep/recordings';
import type { JobAdvice } from './adviseOnJob.js';
import type { ExpectedReadings } from './expectedReadings.js';
import type { JudgedJob } from './judgedJob.js';
import type { HookUpPlan } from './planHookUp.js';
import type { OpenedReport } from './reopenReport.js';

/** What the commands print with `--json`, each under its name. All quantities are in SI units. */
export interface PrintedData {
  readonly terminals: PinFinding;
  readonly plan: HookUpPlan;
  readonly expect: ExpectedReadings | ExpectedOfJob;
  readonly readings: JudgedJob;
  /** With `--json-lines` each entry is a line. */
  readonly score: readonly ScoredFile[] | JudgedJob;
  readonly batch: WrittenBatch;
  readonly compare: SweepComparison;
  readonly history: HistoryList | SensorHistory | SavedHistory;
  readonly instruments: JobAdvice;
  readonly 'set-closed': ClosedSetting;
  readonly report: WrittenReport;
  readonly reopen: OpenedReport | JudgedJob;
  readonly simulate: SimulatedRecording;
}

/** What a sound sensor of another kind must read. */
export interface ExpectedOfJob {
  readonly title: string;
  readonly sensor: string;
  readonly expected: ExpectedOfKind;
}

/** A recording with how it was read and its score, or with why it could not be judged. */
export type ScoredFile =
  | {
      readonly file: string;
      readonly reading: DelimitedReading | SoundReading;
      readonly score: Score;
    }
  | UnjudgedFile;

/** A recording that could not be judged. */
export interface UnjudgedFile {
  readonly file: string;
  readonly refused: Refusal;
}

/** Why an input was refused: a code, where in the input, and a sentence that says what would be right. */
export interface Refusal {
  readonly code: string;
  readonly path: string;
  readonly place?: TextPlace;
  readonly sentence: string;
}

/** Where the results of a batch were written to, and how many recordings came out how. */
export interface WrittenBatch {
  readonly summary: string;
  readonly table: string;
  readonly results: string;
  readonly journal: string;
  readonly counts: Readonly<Record<Verdict | 'notJudged', number>>;
}

/** The sensors of a history, each with what changed. */
export interface HistoryList {
  readonly sensors: readonly ListedSensor[];
}

/** A sensor of a history: its last verdict, its dates in s since 1970, and what is told to have changed. */
export interface ListedSensor {
  readonly sensor: string;
  readonly records: number;
  readonly verdict: Verdict;
  readonly from?: number;
  readonly to?: number;
  readonly changed: readonly HistoryQuantity[];
}

/** How many records of a history could be saved, and where. */
export interface SavedHistory {
  readonly out: string;
  readonly records: number;
}

/** Where a report was written to, and the verdicts in it. */
export interface WrittenReport {
  readonly out: string;
  readonly recordings: readonly { readonly file: string; readonly verdict: Verdict }[];
}

/** An invented recording: times in s, readings in V, and what befell it. */
export interface SimulatedRecording {
  readonly time: readonly number[];
  readonly signal: readonly number[];
  readonly events: readonly SimulatedEvent[];
}
