import { dirname, join, resolve } from 'node:path';
import { InputError, scoreSweep } from '@truesweep/core';
import {
  checkRecording,
  identifyRecording,
  type Job,
  type JobRecording,
  jobCriteria,
  jobExpectation,
  readJobRecording,
} from '@truesweep/jobs';
import { nothingToScoreSentence, oneInputSentence, standardInputName } from '@truesweep/wording';
import { inFile } from './inFile.js';
import type { JudgedFile } from './judgedFile.js';
import { readInput, readJobInput, standardInput } from './readInput.js';

/**
 * Judges recordings by a job; those that the job lists where no file is named.
 *
 * @throws InputError for the first input that is wrong, its path beginning with the name of the file.
 */
export async function judgeFiles(
  files: readonly string[],
  jobPath: string,
): Promise<{ readonly job: Job; readonly judged: readonly JudgedFile[] }> {
  if ([...files, jobPath].filter((path) => path === standardInput).length > 1) {
    throw new InputError('one-input', standardInput, oneInputSentence);
  }
  const { job, expected } = await inFile(jobPath, async () => {
    const read = await readJobInput(jobPath);
    return { job: read, expected: jobExpectation(read) };
  });
  const criteria = jobCriteria(job);
  const judged: JudgedFile[] = [];
  for (const { file: path, ...listedHere } of recordingsOf(files, job, jobPath)) {
    const file = path === standardInput ? standardInputName : path;
    const one = await inFile(file, async () => {
      const content = await readInput(path);
      const identity = await identifyRecording(content);
      // A job that a page saved tells names without folders: what it says goes by the hash.
      const sameBytes = job.recordings?.find(({ sha256 }) => sha256 === identity.sha256);
      const listed = Object.keys(listedHere).length > 0 ? listedHere : sameBytes;
      checkRecording({ ...listed, file }, identity);
      const { sweep, reading, recorder } = readJobRecording(content, { ...listed, file }, job);
      const score = scoreSweep(sweep, expected, recorder, criteria);
      return { file, ...identity, sweep, reading, recorder, score, criteria };
    });
    judged.push(one);
  }
  return { job, judged };
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
