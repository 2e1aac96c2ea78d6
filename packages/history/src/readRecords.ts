import { checkText, InputError, isInputError, type Score } from '@truesweep/core';
import type { RecordingResult } from '@truesweep/jobs/node';
import { checkRecord } from './checkRecord.js';
import type { HistoryRecord } from './historyRecord.js';
import { recordOf } from './recordOf.js';
import { recordOfScore } from './recordOfScore.js';

/** What a file of results holds. */
export interface ReadRecords {
  /** Its records, in its order. */
  readonly records: readonly HistoryRecord[];
  /** How many recordings it tells of that could not be judged: a count, 0 or more. */
  readonly notJudged: number;
  /** What in it is no result: where it stands, and what is wrong with it. */
  readonly damaged: readonly { readonly place: string; readonly sentence: string }[];
}

/**
 * Records out of what was saved: results of a batch or records of a history, one JSON text a line, or the file of a shelf. What is damaged is told and the rest
 * read.
 *
 * @param text The whole file.
 * @param name What it is called in refusals.
 * @throws InputError `not-json` where it is none of these, `newer-version` for the shelf of a later version.
 *
 * @example
 * const line = '{"kind":"truesweep-record","form":1,"sensor":"Port engine"}';
 * const { records, damaged } = readRecords(line, 'season.jsonl');
 * [records.length, damaged[0].place] // => [0, 'line 1']
 */
export function readRecords(text: string, name: string): ReadRecords {
  checkText(text, 'text');
  checkText(name, 'name');
  const shelf = shelfOf(text, name);
  return gathered(shelf ? shelfEntries(shelf.sensors) : lineEntries(text.split(/\r?\n/), name));
}

/** What stands in one place: a record, something not judged, or what is wrong with it. */
export type ReadEntry =
  | {
      /** What is kept of the recording. */
      readonly record: HistoryRecord;
    }
  | {
      /** Of a recording that could not be judged. */
      readonly notJudged: true;
    }
  | {
      /** Where what is no result stands, such as `line 4`. */
      readonly place: string;
      /** What is wrong with it. */
      readonly sentence: string;
    };

/**
 * The entries of a file's lines.
 *
 * @throws InputError `not-json` where the first line with anything in it is no JSON.
 */
export function* lineEntries(lines: Iterable<string>, name: string): Generator<ReadEntry> {
  let line = 0;
  let isFirst = true;
  for (const text of lines) {
    line++;
    if (text.trim() === '') continue;
    yield lineEntry(text, line, isFirst ? name : undefined);
    isFirst = false;
  }
}

/** One line's entry; its file's name is given for the first, which must be JSON. */
export function lineEntry(text: string, line: number, name?: string): ReadEntry {
  const place = `line ${line}`;
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    if (name !== undefined) throw noResults(name);
    return { place, sentence: 'This line is no JSON.' };
  }
  return entryOf(value, place);
}

/** What a file is refused with that holds no results. */
export function noResults(name: string): InputError {
  return new InputError(
    'not-json',
    name,
    'This is no file of results: it must be the results.jsonl of a batch, records of a history, or the saved shelf of the calculators.',
  );
}

function entryOf(value: unknown, place: string): ReadEntry {
  try {
    if (isGroup(value) && 'refused' in value) return { notJudged: true };
    const isRecord = isGroup(value) && value.kind === 'truesweep-record';
    return { record: checkRecord(isRecord ? value : ofResult(value)) };
  } catch (error) {
    return { place, sentence: sentenceOf(error) };
  }
}

/** A batch's result as a record; its parts are checked as those of the record that they become. */
function ofResult(value: unknown): unknown {
  const isResult =
    isGroup(value) &&
    Array.isArray(value.checks) &&
    Array.isArray(value.causes) &&
    isGroup(value.quality);
  if (!isResult) throw new InputError('unreadable', 'record', 'This is no result of a recording.');
  return recordOf(value as unknown as RecordingResult & Parameters<typeof recordOf>[0]);
}

function gathered(entries: Iterable<ReadEntry>): ReadRecords {
  const records: HistoryRecord[] = [];
  const damaged: { place: string; sentence: string }[] = [];
  let notJudged = 0;
  for (const entry of entries) {
    if ('record' in entry) records.push(entry.record);
    else if ('notJudged' in entry) notJudged++;
    else damaged.push(entry);
  }
  return { records, notJudged, damaged };
}

/** The data of a shelf's file; nothing where it is another file. */
export function shelfOf(text: string, name: string): Record<string, unknown> | undefined {
  if (!text.includes('"truesweep-shelf"')) return undefined;
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return undefined;
  }
  if (!isGroup(value) || value.kind !== 'truesweep-shelf') return undefined;
  if (value.version !== 1)
    throw new InputError(
      'newer-version',
      name,
      'A newer truesweep wrote this shelf; read it with that one.',
    );
  return value;
}

/** The entries of a shelf: of each sensor's results, filed by its serial number, else by its name. */
export function* shelfEntries(sensors: unknown): Generator<ReadEntry> {
  for (const [i, sensor] of (Array.isArray(sensors) ? sensors : []).entries()) {
    const place = `sensor ${i + 1}`;
    const results = isGroup(sensor) ? sensor.results : undefined;
    if (!isGroup(sensor) || !Array.isArray(results)) {
      yield { place, sentence: 'This sensor has no list of results.' };
      continue;
    }
    const named = [sensor.serial, sensor.name].find((one) => typeof one === 'string' && one.trim());
    for (const [j, result] of results.entries())
      yield shelfEntry(result, String(named ?? ''), `${place}, result ${j + 1}`);
  }
}

function shelfEntry(result: unknown, sensor: string, place: string): ReadEntry {
  try {
    const { score, sha256, recording, at } = (result ?? {}) as Record<string, unknown>;
    const file = String(recording ?? '');
    const record = recordOfScore(score as Score, { sensor, sha256: String(sha256), file });
    // A recording without a date was made no later than it was judged, and hardly ever long before.
    const dated =
      record.date === undefined ? { ...record, date: String(at), dateFrom: 'judged' } : record;
    return { record: checkRecord(dated) };
  } catch (error) {
    return { place, sentence: sentenceOf(error) };
  }
}

function sentenceOf(error: unknown): string {
  if (isInputError(error)) return error.message;
  if (error instanceof TypeError) return 'This is no result of a recording.';
  throw error;
}

function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
