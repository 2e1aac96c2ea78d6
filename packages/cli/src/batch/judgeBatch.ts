import { existsSync } from 'node:fs';
import { stat } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { dirname, isAbsolute, join, resolve } from 'node:path';
import { type Advice, InputError, type Verdict } from '@truesweep/core';
import type { JudgedRecording, RecordingResult } from '@truesweep/jobs/node';
import {
  adviceCautions,
  type BatchCounts,
  batchOutcomeLabels,
  batchSentence,
  batchStoppedSentence,
  batchWords,
  causeMeanings,
  moreNotJudgedSentence,
  nothingToBatchSentence,
  notWorkersSentence,
  otherResultsSentence,
  refusalSentence,
} from '@truesweep/wording';
import { errorLine } from '../errorLine.js';
import { badInputCode, exitCodeOf, failedCode, stoppedCode } from '../exitCodes.js';
import { inputBounds } from '../inputBounds.js';
import { jsonText } from '../jsonText.js';
import { layOut } from '../layOut.js';
import { printTheseCautions } from '../printCautions.js';
import type { Output } from '../terminal.js';
import { paragraph, type TextPart } from '../textPart.js';
import type { BatchInput } from './batchInput.js';
import { batchInputs } from './batchInputs.js';
import { type BatchProgress, batchProgress } from './batchProgress.js';
import { claimFolder } from './claimFolder.js';
import { openJournal } from './journal.js';
import { judgePool } from './judgePool.js';
import { knownJobs } from './knownJobs.js';
import { runBatch } from './runBatch.js';
import { resultFiles, writeResults } from './writeResults.js';

export interface BatchOptions {
  readonly out: string;
  readonly job?: string;
  readonly manifest?: string;
  readonly history?: string;
  readonly workers?: string;
  readonly largest?: string;
  readonly json?: true;
  readonly exitByVerdict?: true;
}

const journalName = 'journal.jsonl';
/** More than so many would rather wait for each other. */
const mostWorkers = 256;
/** So many of those that need attention are printed, and as many of those that could not be judged. */
const mostPrinted = 10;

/**
 * Judges a batch, and writes and prints what came of it.
 *
 * @returns The exit code.
 * @throws InputError for a job, a manifest or a folder that is wrong; what was judged by then stays in the journal.
 */
export async function judgeBatch(
  named: readonly string[],
  options: BatchOptions,
  output: Output,
): Promise<number> {
  const { out, job, manifest, exitByVerdict } = options;
  const workers = workersOf(options.workers);
  const { largest } = inputBounds(output, 'a recording', options.largest);
  const paths = named.length > 0 || manifest !== undefined ? named : await ownRecordings(job);
  if (job !== undefined) await knownJobs()(job);
  const journalPath = join(out, journalName);
  refuseOthersResults(out, journalPath);
  const outputs = [...resultFiles, journalName].map((name) => resolve(out, name));
  const inputs = () => batchInputs({ paths, ...(manifest !== undefined && { manifest }), outputs });

  const stop = new AbortController();
  const release = claimFolder(out);
  const forget = output.onInterrupt?.(() => stop.abort());
  try {
    const journal = openJournal(journalPath);
    const counting = new AbortController();
    const progress = batchProgress(output, () => stop.abort());
    const pool = judgePool(workers);
    let failures: number;
    try {
      countInputs(inputs(), progress, AbortSignal.any([stop.signal, counting.signal]));
      failures = await runBatch({
        inputs: inputs(),
        ...(job !== undefined && { job }),
        journal,
        pool,
        // One more for each worker, so that none waits for what is next.
        atOnce: 2 * workers,
        largest,
        onDone: progress.onDone,
        signal: stop.signal,
      });
    } finally {
      counting.abort();
      progress.end();
      await pool.end();
    }
    if (stop.signal.aborted) {
      journal.close();
      output.printError(errorLine(batchStoppedSentence(journal.size(), journalPath)));
      return stoppedCode;
    }
    if (journal.size() === 0)
      throw new InputError('nothing-to-score', 'batch', nothingToBatchSentence);
    const written = await writeResults(out, journal);
    journal.close();
    print(written, options, output);
    if (options.history !== undefined) {
      const { addToHistory } = await import('../history/addToHistory.js');
      const { withHistory } = await import('../history/withHistory.js');
      await withHistory(options.history, true, (history) =>
        addToHistory(history, [out], options.history!, output),
      );
    }
    if (failures > 0) return failedCode;
    if (written.counts['not-judged'] > 0) return badInputCode;
    return exitByVerdict ? exitCodeOf(verdictsIn(written.counts)) : 0;
  } finally {
    forget?.();
    release();
  }
}

function workersOf(text: string | undefined): number {
  if (text === undefined) return availableParallelism();
  const workers = /^\d+$/.test(text) ? Number(text) : 0;
  if (workers >= 1 && workers <= mostWorkers) return workers;
  throw new InputError('not-a-count', '--workers', notWorkersSentence(text));
}

/** The recordings that a job lists, from the working directory. */
async function ownRecordings(job: string | undefined): Promise<readonly string[]> {
  const known = job === undefined ? undefined : await knownJobs()(job);
  const files = (known?.job.recordings ?? []).map(({ file }) =>
    isAbsolute(file) ? file : join(dirname(job ?? ''), file),
  );
  if (files.length > 0) return files;
  throw new InputError('nothing-to-score', job ?? 'batch', nothingToBatchSentence);
}

/** Files of somebody else that bear the names of results would be lost. */
function refuseOthersResults(out: string, journal: string): void {
  if (existsSync(journal)) return;
  const there = resultFiles.find((name) => existsSync(join(out, name)));
  if (there !== undefined) throw new InputError('file-exists', out, otherResultsSentence(there));
}

/** Counts what there is to judge beside the judging, for the time that is left. */
async function countInputs(
  inputs: AsyncIterable<BatchInput>,
  progress: Pick<BatchProgress, 'onCounted' | 'allCounted'>,
  signal: AbortSignal,
): Promise<void> {
  try {
    for await (const { file } of inputs) {
      if (signal.aborted) return;
      progress.onCounted((await stat(file).catch(() => undefined))?.size ?? 0);
    }
    progress.allCounted();
  } catch {
    // What is wrong with them is told by who judges them.
  }
}

function verdictsIn(counts: BatchCounts): readonly Verdict[] {
  const verdicts = ['pass', 'marginal', 'inconclusive', 'fail'] as const;
  return verdicts.filter((verdict) => counts[verdict] > 0);
}

/** What came of a batch, and what needs attention first. */
function print(
  { counts, first }: Awaited<ReturnType<typeof writeResults>>,
  { out, json }: BatchOptions,
  output: Output,
): void {
  const [jsonLines, csv, page] = resultFiles.map((name) => join(out, name));
  const refused = first.filter((result) => 'refused' in result).slice(0, mostPrinted);
  for (const result of refused) output.printError(errorLine(refusedLine(result)));
  const more = counts['not-judged'] - refused.length;
  if (more > 0) output.printError(errorLine(moreNotJudgedSentence(more, csv!)));
  if (json) {
    const journal = join(out, journalName);
    const { 'not-judged': notJudged, ...verdicts } = counts;
    const files = { summary: page!, table: csv!, results: jsonLines!, journal };
    output.print(jsonText('batch', { ...files, counts: { ...verdicts, notJudged } }));
    return;
  }
  const attention = first.filter(
    (result) => 'verdict' in result && result.verdict !== 'pass',
  ) as readonly JudgedRecording[];
  const parts: TextPart[] = [
    paragraph(batchSentence(counts)),
    ...(attention.length > 0 ? ['', `${batchWords.first}:`] : []),
    ...attention.slice(0, mostPrinted).map((one) => ({
      ...paragraph(attentionText(one), `  ${batchOutcomeLabels[one.verdict].toUpperCase()}: `),
      verdict: one.verdict,
    })),
    '',
    `${batchWords.results}:`,
    ...[page!, csv!, jsonLines!].map((path) => `  ${path}`),
    '',
    ...printTheseCautions(adviceCautions(advicesOf(attention), attention.length > 0)),
  ];
  output.print(layOut(parts, output));
}

function refusedLine(result: RecordingResult): string {
  return 'refused' in result ? refusalSentence(result.refused) : '';
}

function attentionText({ file, sensor, causes }: JudgedRecording): string {
  const cause = causes[0] && causeMeanings[causes[0].cause];
  return `${file} (${sensor}). ${cause ?? ''}`;
}

function advicesOf(judged: readonly JudgedRecording[]): readonly Advice[] {
  return [...new Set(judged.flatMap(({ advice }) => advice))];
}
