import { InputError } from '@truesweep/core';
import { type HistoryRecord, readRecords } from '@truesweep/history';
import {
  damagedEntrySentence,
  historyPageWords,
  moreDamagedSentence,
  readRecordsSentence,
} from '@truesweep/wording';
import type { ReadSource } from './historyProtocol.js';

/** Of what is damaged so many entries are told one by one. */
const mostTold = 5;

/** A text longer than this is more than an engine takes, bytes. */
const mostBytes = 5e8;

/** Reads a text of results; one that holds none is refused with the reason. */
export function readText(
  text: string,
  name: string,
): { readonly records: readonly HistoryRecord[]; readonly source: ReadSource } {
  try {
    const { records, notJudged, damaged } = readRecords(text, name);
    const more = damaged.length - mostTold;
    const told = damaged
      .slice(0, mostTold)
      .map(({ place, sentence }) => damagedEntrySentence(name, place, sentence));
    return {
      records,
      source: {
        said: readRecordsSentence(name, records.length, notJudged),
        damaged: more > 0 ? [...told, moreDamagedSentence(more)] : told,
        refused: false,
      },
    };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return refused(name, error.message);
  }
}

/** Reads a file of results. */
export async function readFile(file: File): Promise<ReturnType<typeof readText>> {
  if (file.size > mostBytes) return refused(file.name, historyPageWords.tooLarge);
  const text = await file.text().catch(() => undefined);
  return text === undefined
    ? refused(file.name, historyPageWords.unreadable)
    : readText(text, file.name);
}

function refused(name: string, why: string): ReturnType<typeof readText> {
  return { records: [], source: { said: `${name}: ${why}`, damaged: [], refused: true } };
}
