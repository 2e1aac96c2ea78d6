import {
  checkFields,
  checkReadable,
  type FieldRules,
  InputError,
  isInputError,
  type Sweep,
  scoreSweep,
  type Verdict,
} from '@truesweep/core';
import { jobCriteria, jobExpectation, jobRecorder, parseJob } from '@truesweep/jobs';
import { findStoredFault } from './findStoredFault.js';
import type { StoredRecording, StoredReport } from './report.js';
import { storedSweep } from './storedSweep.js';

/** What became of a recording of a report when it was opened. */
export interface Recheck {
  /** The recording's name in the report. */
  readonly name: string;
  /** The verdict that the report states. */
  readonly stated: Verdict;
  /** The verdict now; left out where the samples are not at hand, so that the report is shown, not checked again. */
  readonly again?: Verdict;
}

const any = () => {};
const reportRules: FieldRules = {
  kind: ['truesweep-report'],
  version: any,
  writtenAt: any,
  'record?': any,
  job: any,
  recordings: any,
};

/**
 * Scores the recordings of a report again, by its own job, where their samples are at hand.
 *
 * @param sweepOf The sweep of a recording whose file was found, with the bytes that the report names.
 *
 * @example
 * const job = { version: 3, title: 'Spare', sensor: { kind: 'potentiometer', name: 'Sensor', track: 5000 }, hookUp: { source: { volts: 5 }, limiter: 1000 }, instrument: { name: 'Logger', inputResistance: 1e7 } } as const;
 * recheckReport({ kind: 'truesweep-report', version: 1, writtenAt: '2026-05-04', job, recordings: [] }) // => []
 */
export function recheckReport(
  report: StoredReport,
  sweepOf: (recording: StoredRecording) => Sweep | undefined = () => undefined,
): readonly Recheck[] {
  checkFields(report, 'report', reportRules);
  checkReadable(report, 'report');
  const fault = findStoredFault(report);
  if (fault !== undefined) {
    const path = `report.${fault}`;
    throw new InputError('no-report', path, `${path} is missing or not what a report holds there.`);
  }
  if (typeof sweepOf !== 'function') {
    const wrong = `sweepOf is a ${typeof sweepOf}; it must be a function that finds a sweep.`;
    throw new InputError('not-a-function', 'sweepOf', wrong);
  }
  const job = parseJob(report.job);
  const { recordings } = report;
  const expected = jobExpectation(job);
  return recordings.map((recording) => {
    const { name, score } = recording;
    const sweep = sweepOf(recording) ?? keptSweep(recording);
    if (!sweep) return { name, stated: score.verdict };
    const recorder = recording.recorder ?? jobRecorder(job);
    const again = scoreSweep(sweep, expected, recorder, jobCriteria(job)).verdict;
    return { name, stated: score.verdict, again };
  });
}

function keptSweep(recording: StoredRecording): Sweep | undefined {
  try {
    return storedSweep(recording);
  } catch (error) {
    if (!isInputError(error) || error.code !== 'broken-samples') throw error;
    throw new InputError(
      'broken-samples',
      recording.name,
      `The samples that the report keeps of ${recording.name} are damaged; open the report as it was written.`,
    );
  }
}
