import {
  checkFields,
  checkRecorder,
  checkScore,
  checkSweep,
  checkText,
  type FieldRules,
  InputError,
  listOf,
  type Recorder,
  type Score,
} from '@truesweep/core';
import { parseJob } from '@truesweep/jobs';
import { filingLabels } from '@truesweep/wording';
import type { Report } from './report.js';

const any = () => {};

const size = (value: unknown, path: string): void => {
  if (Number.isSafeInteger(value) && (value as number) >= 0) return;
  const isGone = value === undefined || value === null;
  const shown = isGone ? 'missing' : typeof value === 'number' ? `${value}` : `a ${typeof value}`;
  throw new InputError(
    isGone ? 'missing' : 'not-a-count',
    path,
    `${path} is ${shown}; it must be a number of bytes.`,
  );
};

/** A judged recording, with or without its sweep. */
export const recordingRules: FieldRules = {
  name: checkText,
  bytes: size,
  sha256: checkText,
  howRead: checkText,
  'recorder?': (value, path) => checkRecorder(value as Recorder, path),
  'sweep?': any,
  'workings?': listOf(any),
  score: (value, path) => checkScore(value as Score, path),
};

/** What a report is filed by. */
export const filingRules: FieldRules = Object.fromEntries(
  Object.keys(filingLabels).map((name) => [`${name}?`, checkText]),
);

const reportRules: FieldRules = {
  job: any,
  writtenAt: checkText,
  'record?': (value, path) => checkFields(value, path, filingRules),
  recordings: listOf(recordingRules),
};

/** A report whose job was read and whose columns are Float64Arrays; refuses what is none, by path. */
export function checkedReport(report: Report): Report {
  checkFields(report, 'report', reportRules);
  return {
    ...report,
    job: parseJob(report.job),
    recordings: report.recordings.map((recording) => ({
      ...recording,
      sweep: checkSweep(recording.sweep),
    })),
  };
}
