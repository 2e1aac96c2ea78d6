import type { HeldStep, Sweep } from '@truesweep/core';
import type { Working } from '@truesweep/explain/written';
import type { JudgedReadings, ReadingsJob } from '@truesweep/jobs';
import type { FilingRecord } from './report.js';

/** A recorded pump-down as a report shows it. */
export interface ReportedPumpDown {
  /** The file's name. */
  readonly name: string;
  /** The samples. */
  readonly sweep: Sweep;
  /** Its held steps, in order: each is a reading, after those that stand in the job. */
  readonly steps: readonly HeldStep[];
}

/** What a report of single readings is made of. */
export interface ReadingsReport {
  /** The job with the readings. */
  readonly job: ReadingsJob;
  /** When the report was written, ISO 8601. */
  readonly writtenAt: string;
  /** What it is filed by; nothing when left out. */
  readonly record?: FilingRecord;
  /** What the readings were judged to say. */
  readonly judged: JudgedReadings;
  /** Recorded pump-downs that readings were taken from; none when left out. */
  readonly pumpDowns?: readonly ReportedPumpDown[];
  /** How the numbers come about, for an appendix, as `explainLimits` writes it; it is not stored. None when left out. */
  readonly workings?: readonly Working[];
}
