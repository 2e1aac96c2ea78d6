import { createReadStream, existsSync } from 'node:fs';
import { InputError, isInputError } from '@truesweep/core';
import { checkRecord } from './checkRecord.js';
import type { HistoryRecord } from './historyRecord.js';
import { joinedRecord } from './joinedRecord.js';
import { type Database, openDatabase, sqliteFault } from './sqlite.js';

/** How every record's text begins. */
const mark = Buffer.from('{"kind":"truesweep-record"');
/** No record's text is longer, bytes; longer ones do not stand in one piece anyway. */
const longest = 2 ** 16;

/**
 * What can be read of a history, a damaged one too: what SQLite still finds of it from either end, and every record's text that stands whole anywhere in
 * the file or in what was written ahead beside it. The file is not changed.
 *
 * @param path Of the file, from the working directory.
 * @returns The records, each recording of a sensor once.
 * @throws InputError `missing-file`.
 *
 * @example
 * const saved = await saveHistory('examples/recordings/sound.csv');
 * saved.length // => 0
 */
export async function saveHistory(path: string): Promise<readonly HistoryRecord[]> {
  if (!existsSync(path)) throw new InputError('missing-file', path, `There is no file ${path}.`);
  const saved = new Map<string, HistoryRecord>();
  const add = (record: HistoryRecord) => {
    const key = `${record.recording} ${record.sensor}`;
    const there = saved.get(key);
    saved.set(key, there ? joinedRecord(there, record) : record);
  };
  // Texts of records that were replaced may still stand about: what SQLite finds goes before them.
  for (const file of [path, `${path}-wal`])
    if (existsSync(file)) for await (const record of recordsWithin(file)) add(record);
  for (const record of await foundBySqlite(path))
    saved.set(`${record.recording} ${record.sensor}`, record);
  return [...saved.values()];
}

async function foundBySqlite(path: string): Promise<readonly HistoryRecord[]> {
  const found = new Map<number, HistoryRecord>();
  let database: Database | undefined;
  try {
    database = await openDatabase(path);
    database.exec('PRAGMA query_only = ON');
    for (const [sign, order, from] of [
      ['>', 'ASC', -1],
      ['<', 'DESC', Number.MAX_SAFE_INTEGER],
    ] as const)
      readRows(database, sign, order, from, found);
  } catch (error) {
    if (sqliteFault(error) === undefined) throw error;
  } finally {
    database?.close();
  }
  return [...found.values()];
}

/** Rows from one end, up to the first that can't be read. */
function readRows(
  database: Database,
  sign: '<' | '>',
  order: 'ASC' | 'DESC',
  from: number,
  found: Map<number, HistoryRecord>,
): void {
  const next = database.prepare(
    `SELECT rowid AS place, data FROM record WHERE rowid ${sign} ? ORDER BY rowid ${order} LIMIT 1`,
  );
  let place = from;
  try {
    for (;;) {
      const row = next.get(place) as { place: number; data: string } | undefined;
      if (!row || found.has(row.place)) return;
      place = row.place;
      const record = recordIn(row.data);
      if (record) found.set(place, record);
    }
  } catch (error) {
    if (sqliteFault(error) === undefined) throw error;
  }
}

async function* recordsWithin(file: string): AsyncGenerator<HistoryRecord> {
  let held = Buffer.alloc(0);
  for await (const piece of createReadStream(file, { highWaterMark: 2 ** 20 })) {
    held = Buffer.concat([held, piece as Buffer]);
    const from = yield* recordsIn(held, held.length - longest);
    held = held.subarray(Math.max(from, 0));
  }
  yield* recordsIn(held, held.length);
}

/** Records that begin before a place; returns from where on is to be looked again. */
function* recordsIn(bytes: Buffer, before: number): Generator<HistoryRecord, number> {
  let at = 0;
  for (;;) {
    const begun = bytes.indexOf(mark, at);
    // The mark itself may have begun at the end.
    if (begun < 0) return Math.max(at, bytes.length - mark.length);
    if (begun >= before) return begun;
    const end = endOf(bytes, begun);
    const record = end === undefined ? undefined : recordIn(bytes.toString('utf8', begun, end));
    if (record) yield record;
    at = record ? end! : begun + mark.length;
  }
}

/** Where the JSON object that begins at a place ends; nothing where it has no end. */
function endOf(bytes: Buffer, begun: number): number | undefined {
  let depth = 0;
  let inText = false;
  const last = Math.min(bytes.length, begun + longest);
  for (let at = begun; at < last; at++) {
    const sign = bytes[at];
    if (inText) {
      if (sign === 0x5c) at++;
      else if (sign === 0x22) inText = false;
    } else if (sign === 0x22) inText = true;
    else if (sign === 0x7b) depth++;
    else if (sign === 0x7d && --depth === 0) return at + 1;
  }
  return undefined;
}

function recordIn(text: string): HistoryRecord | undefined {
  try {
    return checkRecord(JSON.parse(text));
  } catch (error) {
    if (error instanceof SyntaxError || isInputError(error)) return undefined;
    throw error;
  }
}
