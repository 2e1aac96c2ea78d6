import { dirname, join, resolve, sep } from 'node:path';
import { type Criteria, type Expectation, InputError, scoreSweep } from '@truesweep/core';
import {
  checkRecording,
  type Job,
  type JobRecording,
  jobCriteria,
  jobExpectation,
  readJobPieces,
} from '@truesweep/jobs';
import { hashedPieces } from '@truesweep/jobs/node';
import { nothingToScoreSentence, oneInputSentence, standardInputName } from '@truesweep/wording';
import { identifiedInput } from './identifiedInput.js';
import { inFile } from './inFile.js';
import { type InputBounds, inputBounds, jobBounds } from './inputBounds.js';
import { type FileAhead, fileAhead, inputPieces, standardInput } from './inputPieces.js';
import type { FileAnswer, JudgedFile } from './judgedFile.js';
import { readJobInput } from './readInput.js';
import type { Output } from './terminal.js';

/** A job, and what becomes of its recordings, each judged when it is asked for. */
export interface JobAnswers {
  readonly job: Job;
  /** The files that are read and those that the job lists: nothing may be written over them. */
  readonly inputs: readonly string[];
  /** How many recordings there are. */
  readonly count: number;
  readonly answers: AsyncIterable<FileAnswer>;
}

/**
 * Judges recordings by a job; those that the job lists where no file is named. Each is answered by itself.
 *
 * @param output Told where an input doesn't come.
 * @throws InputError for a job that is wrong or gives nothing to judge.
 */
export async function judgeFiles(
  files: readonly string[],
  { job: jobPath, largest }: { readonly job: string; readonly largest?: string },
  output: Output,
): Promise<JobAnswers> {
  const bounds = inputBounds(output, 'a recording', largest);
  if ([...files, jobPath].filter((path) => path === standardInput).length > 1) {
    throw new InputError('one-input', standardInput, oneInputSentence);
  }
  const { job, expected } = await inFile(jobPath, async () => {
    const read = await readJobInput(jobPath, jobBounds(output));
    return { job: read, expected: jobExpectation(read) };
  });
  const listed = listedIn(job, jobPath);
  const recordings = recordingsOf(files, listed, jobPath);
  const answers = answersOf(recordings, { job, expected, criteria: jobCriteria(job), bounds });
  const inputs = [jobPath, ...[...recordings, ...listed].map(({ file }) => file)];
  return { job, inputs, count: recordings.length, answers };
}

/** What all recordings of a job are judged by. */
interface Measures {
  readonly job: Job;
  readonly expected: Expectation;
  readonly criteria: Criteria;
  readonly bounds: InputBounds;
}

async function* answersOf(
  recordings: readonly JobRecording[],
  measures: Measures,
): AsyncGenerator<FileAnswer> {
  for (const recording of recordings) yield await answerOf(recording, measures);
}

async function answerOf(recording: JobRecording, measures: Measures): Promise<FileAnswer> {
  const { file: path } = recording;
  const file = path === standardInput ? standardInputName : path;
  try {
    return await inFile(file, () => judge(path, { ...recording, file }, measures));
  } catch (refusal) {
    if (refusal instanceof InputError) return { file, refusal };
    throw refusal;
  }
}

async function judge(
  path: string,
  { file, ...listedHere }: JobRecording,
  { job, expected, criteria, bounds }: Measures,
): Promise<JudgedFile> {
  const isListed = Object.keys(listedHere).length > 0;
  const isTold = (isListed ? [listedHere] : (job.recordings ?? [])).some(
    ({ bytes, sha256 }) => bytes !== undefined || sha256 !== undefined,
  );
  const { known, pieces } = isTold
    ? await identifiedInput(path, bounds)
    : { known: undefined, pieces: inputPieces(path, bounds) };
  // A job that a page saved tells names without folders: what it says goes by the hash.
  const sameBytes = known && job.recordings?.find(({ sha256 }) => sha256 === known.sha256);
  const listed = isListed ? listedHere : sameBytes;
  if (known) checkRecording({ ...listed, file }, known);
  const hashed = hashedPieces(pieces);
  const ahead = await fileAhead(path);
  const read = await readJobPieces(hashed.pieces, { ...listed, file }, job, sizeOf(ahead));
  const identity = hashed.identity();
  // It may have been written to meanwhile.
  checkRecording({ ...listed, file }, identity);
  const { sweep, reading, recorder } = read;
  const score = scoreSweep(sweep, expected, recorder, criteria);
  return { file, ...identity, sweep, reading, recorder, score, criteria, expected };
}

const sizeOf = ({ size }: FileAhead) => (size === undefined ? {} : { size });

/** The recordings of a job, their paths from the working directory. */
function listedIn(job: Job, jobPath: string): readonly JobRecording[] {
  const folder = dirname(jobPath);
  return (job.recordings ?? []).map((one) => ({ ...one, file: fromHere(folder, one.file) }));
}

function fromHere(folder: string, file: string): string {
  const path = resolve(folder, file) === resolve(file) ? file : join(folder, file);
  // Only who calls the program can mean the standard input.
  return path === standardInput ? `.${sep}${path}` : path;
}

/** The recordings to judge, with what the job knows of how they are written. */
function recordingsOf(
  files: readonly string[],
  listed: readonly JobRecording[],
  jobPath: string,
): readonly JobRecording[] {
  const known = new Map(listed.toReversed().map((one) => [resolve(one.file), one]));
  const wanted =
    files.length === 0 ? listed : files.map((file) => ({ ...known.get(resolve(file)), file }));
  if (wanted.length > 0) return wanted;
  throw new InputError('nothing-to-score', jobPath, nothingToScoreSentence);
}
