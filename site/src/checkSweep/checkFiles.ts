import { InputError, scoreSweep, type Verdict } from '@truesweep/core';
import {
  findRecordings,
  identifyRecording,
  type Job,
  jobCriteria,
  jobExpectation,
  type NamedFile,
  readJob,
  readJobRecording,
} from '@truesweep/jobs';
import { type ReportRecording, reportHtml } from '@truesweep/report';
import { checkSweepWords, howRead, refusalSentence } from '@truesweep/wording';

/** A job's recordings as they were judged, with the report of them. */
export interface CheckedFiles {
  readonly title: string;
  readonly recordings: readonly { readonly name: string; readonly verdict: Verdict }[];
  /** The report, one HTML file. */
  readonly report: string;
}

/** Why files can't be judged: what is wrong and what would be right. */
export interface RefusedFiles {
  readonly refusal: string;
}

/**
 * Judges recordings by the job among the same files.
 *
 * @param writtenAt When, ISO 8601; it stands in the report.
 */
export async function checkFiles(
  files: readonly NamedFile[],
  writtenAt: string,
): Promise<CheckedFiles | RefusedFiles> {
  try {
    const { job, recordings } = splitFiles(files);
    const judged = await judge(job, recordings);
    return {
      title: job.title,
      recordings: judged.map(({ name, score }) => ({ name, verdict: score.verdict })),
      report: reportHtml({ job, writtenAt, recordings: judged }),
    };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const { path, place, message, code } = error;
    return { refusal: refusalSentence({ path, place, sentence: message, code }) };
  }
}

/** The job, which is the one file of JSON, and the others, which are recordings. */
function splitFiles(files: readonly NamedFile[]): {
  readonly job: Job;
  readonly recordings: readonly NamedFile[];
} {
  const isJob = ({ name }: NamedFile): boolean => /\.json$/i.test(name);
  const [job, another] = files.filter(isJob);
  const recordings = files.filter((file) => !isJob(file));
  if (!job) throw new InputError('no-job', 'files', checkSweepWords.noJob);
  if (another) throw new InputError('two-jobs', another.name, checkSweepWords.twoJobs);
  if (recordings.length === 0) {
    throw new InputError('nothing-to-score', job.name, checkSweepWords.noRecording);
  }
  return { job: readJob(new TextDecoder().decode(job.bytes), job.name), recordings };
}

/** Judges each file; one that the job lists is read as the job says. */
async function judge(job: Job, files: readonly NamedFile[]): Promise<readonly ReportRecording[]> {
  const listed = await findRecordings(job.recordings ?? [], files);
  const expected = jobExpectation(job);
  const criteria = jobCriteria(job);
  return await Promise.all(
    files.map(async (file) => {
      const told = listed.find((one) => one.file === file);
      const { sweep, reading, recorder } = readJobRecording(
        file.bytes,
        { ...told?.recording, file: file.name },
        job,
      );
      const score = scoreSweep(sweep, expected, recorder, criteria);
      const identity = told?.identity ?? (await identifyRecording(file.bytes));
      return { name: file.name, ...identity, howRead: howRead(reading), recorder, sweep, score };
    }),
  );
}
