import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { type RecordingResult, writeFileAtomically } from '@truesweep/jobs/node';
import { type BatchCounts, visibleText } from '@truesweep/wording';
import { attentionOrder, outcomeOf } from './attentionOrder.js';
import { firstInOrder } from './firstInOrder.js';
import type { Journal } from './journal.js';
import { csvHead, csvRow } from './resultsCsv.js';
import { summaryPage } from './summaryPage.js';

/** What a batch leaves in its folder beside the journal. */
export const resultFiles = ['results.jsonl', 'results.csv', 'summary.html'] as const;

/** A page with more would take long to open. */
const mostShown = 1000;
/** So much is written at a time, characters. */
const pieceLength = 2 ** 18;

/**
 * Writes the results of a batch, each file whole or not at all: the same bytes for the same recordings, whatever was judged first or before. So they tell
 * no time of judging, which stands in the journal.
 *
 * @returns How many recordings came out how, and those that need attention first.
 * @throws InputError `cannot-write`.
 */
export async function writeResults(
  folder: string,
  journal: Journal,
): Promise<{ readonly counts: BatchCounts; readonly first: readonly RecordingResult[] }> {
  const counts = { fail: 0, inconclusive: 0, 'not-judged': 0, marginal: 0, pass: 0 };
  const first = firstInOrder<RecordingResult>(mostShown, attentionOrder);
  function* rows() {
    yield csvHead;
    for (const result of journal.inOrder()) {
      counts[outcomeOf(result)] += 1;
      first.add(result);
      yield csvRow(result);
    }
  }
  function* lines() {
    for (const { judgedAt: _, ...result } of journal.inOrder()) {
      yield `${visibleText(JSON.stringify(result))}\n`;
    }
  }
  const [jsonLines, csv, page] = resultFiles;
  const write = (name: string, text: string | AsyncIterable<string>) =>
    writeFileAtomically(join(folder, name), text, { overwrite: true });
  await removeUnfinished(folder);
  await write(jsonLines, inPieces(lines()));
  await write(csv, inPieces(rows()));
  const shown = first.first();
  await write(page, summaryPage(counts, shown));
  return { counts, first: shown };
}

/** What a batch that was killed while it wrote left; nobody else writes to its folder. */
async function removeUnfinished(folder: string): Promise<void> {
  const isUnfinished = (name: string) =>
    name.endsWith('.part') && resultFiles.some((file) => name.startsWith(`${file}.`));
  const names = (await readdir(folder).catch(() => [])).filter(isUnfinished);
  await Promise.all(names.map((name) => rm(join(folder, name), { force: true })));
}

async function* inPieces(texts: Iterable<string>): AsyncGenerator<string> {
  let held = '';
  for (const text of texts) {
    held += text;
    if (held.length < pieceLength) continue;
    yield held;
    held = '';
  }
  if (held !== '') yield held;
}
