import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { InputError } from '@truesweep/core';
import type { HistoryRecord } from '@truesweep/history';
import { recordsInFile } from '@truesweep/history/node';
import {
  damagedEntrySentence,
  moreDamagedSentence,
  noResultsInFolderSentence,
} from '@truesweep/wording';
import { filesBelow } from '../batch/filesBelow.js';
import { errorLine } from '../errorLine.js';
import type { Output } from '../terminal.js';

/** So many entries that are no results are told of one by one. */
const mostTold = 10;
/** So many records are handed on at a time: another process that waits for its turn to write waits for milliseconds. */
const piece = 500;

/**
 * The records of files and folders of results, piece by piece; what in them is no result is told on the error output.
 *
 * @param onNotJudged Called for each recording that could not be judged.
 * @throws InputError for a file that is none of results; the pieces before it were handed on.
 */
export async function* sourceRecords(
  sources: readonly string[],
  output: Output,
  onNotJudged: () => void,
): AsyncGenerator<readonly HistoryRecord[]> {
  let held: HistoryRecord[] = [];
  let damaged = 0;
  for await (const path of resultFiles(sources)) {
    for await (const entry of recordsInFile(path)) {
      if ('notJudged' in entry) onNotJudged();
      else if ('record' in entry) held.push(entry.record);
      else if (++damaged <= mostTold)
        output.printError(errorLine(damagedEntrySentence(path, entry.place, entry.sentence)));
      if (held.length < piece) continue;
      yield held;
      held = [];
    }
  }
  if (held.length > 0) yield held;
  if (damaged > mostTold) output.printError(errorLine(moreDamagedSentence(damaged - mostTold)));
}

/** Files as they are named; of a batch's folder its results, of another whatever ends as results do, such as those that a queue's workers filed. */
async function* resultFiles(sources: readonly string[]): AsyncGenerator<string> {
  for (const source of sources) {
    const isFolder = statSync(source, { throwIfNoEntry: false })?.isDirectory() ?? false;
    const ofBatch = join(source, 'results.jsonl');
    if (!isFolder) yield source;
    else if (existsSync(ofBatch)) yield ofBatch;
    else yield* resultsBelow(source);
  }
}

async function* resultsBelow(folder: string): AsyncGenerator<string> {
  let isAny = false;
  for await (const { file, isFolder, refusal } of filesBelow(folder)) {
    if (refusal) throw refusal;
    if (isFolder || !/\.jsonl?$/i.test(file)) continue;
    isAny = true;
    yield file;
  }
  if (!isAny) throw new InputError('missing-file', folder, noResultsInFolderSentence(folder));
}
