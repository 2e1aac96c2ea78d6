import { dirname, join, resolve } from 'node:path';
import { InputError, scoreSweep } from '@truesweep/core';
import {
  type Job,
  type JobRecording,
  jobCriteria,
  jobExpectation,
  jobRecorder,
} from '@truesweep/jobs';
import { loadJob, readFileBytes } from '@truesweep/jobs/node';
import { readDelimited } from '@truesweep/recordings';
import { nothingToScoreSentence } from '@truesweep/wording';
import type { JudgedFile } from './judgedFile.js';

/**
 * Judges recordings by a job; those that the job lists where no file is named.
 *
 * @throws InputError for the first input that is wrong, its path beginning with the name of the file.
 */
export async function judgeFiles(
  files: readonly string[],
  jobPath: string,
): Promise<readonly JudgedFile[]> {
  const { job, expected } = await inFile(jobPath, async () => {
    const read = await loadJob(jobPath);
    return { job: read, expected: jobExpectation(read) };
  });
  const criteria = jobCriteria(job);
  const judged: JudgedFile[] = [];
  for (const { file, ...options } of recordingsOf(files, job, jobPath)) {
    const one = await inFile(file, async () => {
      const { sweep, reading } = readDelimited(await readFileBytes(file), {
        ...options,
        name: file,
      });
      const score = scoreSweep(sweep, expected, jobRecorder(job), criteria);
      return { file, reading, score, criteria };
    });
    judged.push(one);
  }
  return judged;
}

/** The recordings to judge, with what the job knows of how they are written. */
function recordingsOf(
  files: readonly string[],
  job: Job,
  jobPath: string,
): readonly JobRecording[] {
  const folder = dirname(jobPath);
  const listed = (job.recordings ?? []).map((one) => ({
    ...one,
    file: resolve(folder, one.file) === resolve(one.file) ? one.file : join(folder, one.file),
  }));
  const wanted =
    files.length === 0
      ? listed
      : files.map((file) => ({
          ...listed.find((one) => resolve(one.file) === resolve(file)),
          file,
        }));
  if (wanted.length > 0) return wanted;
  throw new InputError('nothing-to-score', jobPath, nothingToScoreSentence);
}

/** Names the file in what its reading or judging refuses. */
async function inFile<Result>(file: string, work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof InputError) || error.path === file) throw error;
    const named = error.message.startsWith(error.path);
    const path = named ? file : `${file}, ${error.path}`;
    throw new InputError(error.code, path, error.message, error.place);
  }
}
