import { basename } from 'node:path';
import { InputError, type Sweep } from '@truesweep/core';
import { type Job, readJobPieces } from '@truesweep/jobs';
import {
  isReadingsReport,
  type Recheck,
  readReadingsReport,
  readReport,
  recheckReport,
} from '@truesweep/report';
import {
  noFilesWithReadingsSentence,
  oneInputSentence,
  standardInputName,
} from '@truesweep/wording';
import { identifiedInput } from './identifiedInput.js';
import { inFile } from './inFile.js';
import type { InputBounds } from './inputBounds.js';
import { standardInput } from './inputPieces.js';
import { type JudgedWithSamples, judgedJob } from './judgedJob.js';
import type { UnjudgedFile } from './printedData.js';
import { readInput } from './readInput.js';
import { unjudgedFile } from './unjudgedFile.js';

/** A report that was opened: its job and what became of its recordings. */
export interface OpenedReport {
  readonly title: string;
  readonly writtenAt: string;
  readonly recordings: readonly Recheck[];
  /** Files that are no recordings of the report, or can't be read. */
  readonly refused: readonly UnjudgedFile[];
}

/**
 * Opens a report and scores its recordings again: those whose samples it keeps, and those among the files.
 *
 * @throws InputError where the file is no report.
 */
export async function reopenReport(
  path: string,
  files: readonly string[],
  bounds: { readonly report: InputBounds; readonly recording: InputBounds },
): Promise<OpenedReport | JudgedWithSamples> {
  if ([path, ...files].filter((one) => one === standardInput).length > 1) {
    throw new InputError('one-input', standardInput, oneInputSentence);
  }
  const name = path === standardInput ? standardInputName : path;
  const html = new TextDecoder().decode(await readInput(path, bounds.report));
  if (isReadingsReport(html)) {
    if (files.length > 0)
      throw new InputError('unexpected', files[0]!, noFilesWithReadingsSentence);
    return await inFile(name, () =>
      judgedJob(readReadingsReport(html, name), path, bounds.recording),
    );
  }
  const report = await inFile(name, async () => readReport(html, name));
  const given = new Map<string, Sweep>();
  const refused: UnjudgedFile[] = [];
  for (const file of files) {
    try {
      const { known, pieces } = await identifiedInput(file, bounds.recording);
      const { sha256, bytes } = known;
      if (!report.recordings.some((one) => one.sha256 === sha256)) refuseOther(file, name);
      given.set(sha256, await inFile(file, () => readAgain(pieces, bytes, file, report.job)));
    } catch (refusal) {
      if (!(refusal instanceof InputError)) throw refusal;
      refused.push(unjudgedFile({ file, refusal }));
    }
  }
  return {
    title: report.job.title,
    writtenAt: report.writtenAt,
    recordings: await inFile(name, async () =>
      recheckReport(report, ({ sha256 }) => given.get(sha256)),
    ),
    refused,
  };
}

async function readAgain(
  pieces: AsyncIterable<Uint8Array>,
  size: number,
  file: string,
  job: Job,
): Promise<Sweep> {
  const listed = job.recordings?.find((one) => basename(one.file) === basename(file));
  const { sweep } = await readJobPieces(pieces, { ...listed, file }, job, { size });
  return sweep;
}

function refuseOther(file: string, path: string): never {
  throw new InputError(
    'not-in-report',
    file,
    `The report ${path} was made from other bytes than these (their SHA-256 differs); name the recording as it was when the report was written.`,
  );
}
