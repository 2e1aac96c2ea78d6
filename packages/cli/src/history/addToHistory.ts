import type { History } from '@truesweep/history/node';
import { addedSentence } from '@truesweep/wording';
import type { Output } from '../terminal.js';
import { sourceRecords } from './sourceRecords.js';

/** Adds files and folders of results to a history, and says on the error output what came of it. */
export async function addToHistory(
  history: History,
  sources: readonly string[],
  store: string,
  output: Output,
): Promise<void> {
  const counts = { added: 0, replaced: 0, known: 0, notJudged: 0 };
  const onNotJudged = () => {
    counts.notJudged += 1;
  };
  for await (const records of sourceRecords(sources, output, onNotJudged)) {
    const { added, replaced, known } = history.add(records);
    counts.added += added;
    counts.replaced += replaced;
    counts.known += known;
  }
  output.printError(`${addedSentence(counts, store)}\n`);
}
