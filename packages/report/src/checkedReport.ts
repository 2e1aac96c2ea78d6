import {
  checkFields,
  checkScore,
  checkSweep,
  type FieldRules,
  InputError,
  listOf,
  type Score,
} from '@truesweep/core';
import { parseJob } from '@truesweep/jobs';
import type { Report } from './report.js';

const any = () => {};

export const text = (value: unknown, path: string): void => {
  if (typeof value === 'string') return;
  const shown = value === undefined ? 'missing' : `a ${typeof value}`;
  throw new InputError('not-a-text', path, `${path} is ${shown}; it must be a text.`);
};

const size = (value: unknown, path: string): void => {
  if (Number.isSafeInteger(value) && (value as number) >= 0) return;
  const shown = typeof value === 'number' ? `${value}` : `a ${typeof value}`;
  throw new InputError('not-a-count', path, `${path} is ${shown}; it must be a number of bytes.`);
};

/** A judged recording, with or without its sweep. */
export const recordingRules: FieldRules = {
  name: text,
  bytes: size,
  sha256: text,
  howRead: text,
  'recorder?': any,
  'sweep?': any,
  score: (value, path) => checkScore(value as Score, path),
};

const reportRules: FieldRules = { job: any, writtenAt: text, recordings: listOf(recordingRules) };

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
