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
  for (const source of sources) {
    const path = resultsOf(source);
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

/** A batch's folder stands for the results in it. */
function resultsOf(source: string): string {
  const isFolder = statSync(source, { throwIfNoEntry: false })?.isDirectory() ?? false;
  if (!isFolder) return source;
  const results = join(source, 'results.jsonl');
  if (existsSync(results)) return results;
  throw new InputError('missing-file', source, noResultsInFolderSentence(source));
}
