import { InputError, scoreSweep } from '@truesweep/core';
import {
  findRecordings,
  identifyRecording,
  type Job,
  type JobRecording,
  jobCriteria,
  jobExpectation,
  type NamedFile,
  type RecordingIdentity,
  readJob,
  readJobRecording,
  writeJob,
} from '@truesweep/jobs';
import type { FilingRecord, ReportRecording } from '@truesweep/report';
import { checkSweepWords, howRead } from '@truesweep/wording';
import { isJobFile } from './chosenFiles.js';
import type { GivenJob, Judged, Progress, ReadBy } from './protocol.js';
import { restsOn } from './restsOn.js';
import { shownRecording } from './shownRecording.js';
import { type Trace, traceOf } from './trace.js';

/** What came of files: a job alone, or recordings with their judgement and what their traces are drawn from. */
export type JudgedFiles =
  | { readonly kind: 'opened'; readonly job: Job }
  | {
      readonly kind: 'judged';
      readonly judged: Judged;
      readonly job: Job;
      readonly traces: readonly Trace[];
      /** Writes the report, one HTML file, filed by what is said; with how the numbers come about, or without. */
      readonly report: (record: FilingRecord, working: boolean) => Promise<string>;
      /** Writes how the numbers of a recording come about, as HTML. */
      readonly working: (index: number) => Promise<string>;
      /** Writes what the judgement of a recording rests on, as HTML with a map as wide as its place. */
      readonly evidence: (index: number, width: number) => Promise<string>;
    };

/**
 * Judges recordings by the job among the same files, else by the one given.
 *
 * @param given The job where none is among the files, and what was done when.
 * @param writtenAt When, ISO 8601; it stands in the report.
 * @param onProgress Called as it goes on.
 * @throws InputError for a job or a recording that can't be read.
 */
export async function judgeFiles(
  files: readonly NamedFile[],
  given: GivenJob,
  writtenAt: string,
  onProgress: (progress: Progress) => void = () => {},
): Promise<JudgedFiles> {
  const { job, recordings } = splitFiles(files, given.job);
  if (recordings.length === 0) return { kind: 'opened', job };
  const read = await judge(job, given, recordings, onProgress);
  const judged: Judged = {
    title: job.title,
    restsOn: restsOn(job, given),
    recordings: read.map(({ recording, trace }) => shownRecording(recording, trace, job)),
    jobText: writeJob({ ...job, recordings: listed(job, read) }),
  };
  const recorded = read.map(({ recording }) => recording);
  return {
    kind: 'judged',
    judged,
    job,
    traces: read.map(({ trace }) => trace),
    report: async (record, working) => {
      const { writtenReport } = await import('./writtenReport.js');
      const code = working ? await import('./sweepWorkings.js') : undefined;
      const shown = code ? recorded.map((one) => code.withWorkings(one, job)) : recorded;
      return writtenReport(job, writtenAt, record, shown);
    },
    working: (index) => workingOf(recorded, job, index),
    evidence: (index, width) => evidenceOf(recorded, job, index, width),
  };
}

/** What the judgement of one of these recordings rests on; nothing where there is none. */
export async function evidenceOf(
  recordings: readonly Omit<ReportRecording, 'sweep'>[],
  job: Job,
  index: number,
  width: number,
): Promise<string> {
  const { drawnEvidence } = await import('./drawnEvidence.js');
  const recording = recordings[index];
  return recording ? drawnEvidence(recording, job, index, width) : '';
}

/** How the numbers of one of some recordings come about; code that is loaded when it is asked for. */
export async function workingOf(
  recordings: readonly Pick<ReportRecording, 'score'>[],
  job: Job,
  index: number,
): Promise<string> {
  const { sweepWorkingsHtml } = await import('./sweepWorkings.js');
  const recording = recordings[index];
  return recording ? sweepWorkingsHtml(recording.score, job) : '';
}

/** The job, which is the one file of JSON, and the others, which are recordings. */
function splitFiles(files: readonly NamedFile[], given: Job | undefined) {
  const [file, another] = files.filter(isJobFile);
  if (another) throw new InputError('one-input', another.name, checkSweepWords.twoJobs);
  const job = file ? readJob(new TextDecoder().decode(file.bytes), file.name) : given;
  if (!job || files.length === 0)
    throw new InputError('nothing-to-score', 'files', checkSweepWords.noFiles);
  return { job, recordings: files.filter((one) => !isJobFile(one)) };
}

interface JudgedFile {
  readonly recording: ReportRecording;
  readonly trace: Trace;
  readonly identity: RecordingIdentity;
  /** What the job says of it; left out where it doesn't list it. */
  readonly told?: JobRecording;
  /** In which units the page was told to read it; left out where it was not. */
  readonly readBy?: ReadBy;
}

/** Judges each file; one that the job lists is read as the job says. */
async function judge(
  job: Job,
  { stretches, text, sound }: GivenJob,
  files: readonly NamedFile[],
  onProgress: (progress: Progress) => void,
): Promise<readonly JudgedFile[]> {
  const found = await findRecordings(job.recordings ?? [], files);
  const expected = jobExpectation(job);
  const criteria = jobCriteria(job);
  const judged: JudgedFile[] = [];
  // One after the other: together they would need the memory of all.
  for (const file of files) {
    const { name } = file;
    const of = found.find((one) => one.file === file);
    const readBy =
      text || sound
        ? {
            ...(text && { text: { ...of?.recording.text, ...text } }),
            ...(sound && { sound }),
          }
        : undefined;
    const { sweep, reading, recorder } = readJobRecording(
      file.bytes,
      { ...(stretches.length > 0 && { stretches }), ...of?.recording, ...readBy, file: name },
      job,
      (part) => onProgress({ name, step: 'reading', part }),
    );
    onProgress({ name, step: 'judging', part: 1 });
    const score = scoreSweep(sweep, expected, recorder, criteria);
    const identity = of?.identity ?? (await identifyRecording(file.bytes));
    const recording = { name, ...identity, howRead: howRead(reading), recorder, sweep, score };
    judged.push({
      recording,
      trace: traceOf(recording, expected),
      identity,
      ...(of && { told: of.recording }),
      ...(readBy && { readBy }),
    });
  }
  return judged;
}

/** The job's list of recordings with the size and the hash of those that were judged, and those that it did not list. */
function listed(job: Job, read: readonly JudgedFile[]): readonly JobRecording[] {
  const before = (job.recordings ?? []).map((recording) => {
    const found = read.find(({ told }) => told === recording);
    return found ? { ...recording, ...found.identity, ...found.readBy } : recording;
  });
  const more = read
    .filter(({ told }) => told === undefined)
    .map(({ recording, identity, readBy }) => {
      const { stretches } = recording.sweep;
      return { file: recording.name, ...identity, ...(stretches && { stretches }), ...readBy };
    });
  return [...before, ...more];
}
