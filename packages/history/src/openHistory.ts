import { existsSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import { InputError, type Verdict } from '@truesweep/core';
import { checkRecord } from './checkRecord.js';
import type { HistoryRecord } from './historyRecord.js';
import { joinedRecord } from './joinedRecord.js';
import { applicationId, atOf, migrate, schemaVersion } from './schema.js';
import { type Database, openDatabase, sqliteFault } from './sqlite.js';

/** What became of records that were added: counts, 0 or more each. */
export interface Added {
  /** New ones: a count, 0 or more. */
  readonly added: number;
  /** Those that took the place of an earlier judgement of the same recording: a count, 0 or more. */
  readonly replaced: number;
  /** Those that were there already, or that an older truesweep judged than the one there: a count, 0 or more. */
  readonly known: number;
}

/** A sensor that a history knows. */
export interface KnownSensor {
  /** Its serial number or name. */
  readonly sensor: string;
  /** How many records it has, 1 or more. */
  readonly records: number;
  /** The verdict of its latest record. */
  readonly verdict: Verdict;
  /** When its first record was made, s since 1970; left out where none has a date. */
  readonly from?: number;
  /** When its last record was made, s since 1970; left out where none has a date. */
  readonly to?: number;
}

/** A history that is open; `close` it in the end. */
export interface History {
  /**
   * Adds records, all or none of them. Of one recording of a sensor there is one record: what is added later takes the place of what was there, unless an older
   * truesweep judged it; a date or a note that it lacks is kept.
   *
   * @throws InputError for what is no record, `cannot-write` where it can't be written.
   */
  readonly add: (records: readonly HistoryRecord[]) => Added;
  /** The sensors, by name. */
  readonly sensors: () => readonly KnownSensor[];
  /** The records of a sensor by date, those without one last; none where it isn't known. */
  readonly records: (sensor: string) => readonly HistoryRecord[];
  /** Closes the file. */
  readonly close: () => void;
}

/** How a history is opened. */
export interface HistoryOptions {
  /** Whether a file is made where there is none; `true` when left out. */
  readonly create?: boolean;
}

/** Another process holds the file for milliseconds at a time. */
const patience = 30_000;

/**
 * Opens a history: an SQLite file that holds what was judged of many sensors over the years. Several processes may have it open at once and add to it. A file of an older truesweep becomes a
 * current one; a damaged one is refused.
 *
 * The file is written ahead (WAL), so that two more files may stand beside it while it is open; it must not lie on a network's drive.
 *
 * @param path Of the file, from the working directory.
 * @throws InputError `missing-file`, `unreadable-file` for another file or a damaged one, `newer-version`, `cannot-write`.
 *
 * @example
 * import { mkdtemp } from 'node:fs/promises';
 * import { tmpdir } from 'node:os';
 * import { join } from 'node:path';
 * import { judgeOne, loadJob } from '@truesweep/jobs/node';
 * import { recordOf } from '@truesweep/history';
 * const path = join(await mkdtemp(join(tmpdir(), 'season-')), 'workshop.history');
 * const job = await loadJob('examples/outboard-sensor.job.json');
 * const judged = await judgeOne('examples/recordings/sound.csv', job, { sensor: 'Port engine', date: '2026-05-03' });
 * const history = await openHistory(path);
 * history.add([recordOf(judged)]) // => { added: 1, replaced: 0, known: 0 }
 * history.add([recordOf(judged)]) // => { added: 0, replaced: 0, known: 1 }
 * history.records('Port engine').map(({ verdict }) => verdict) // => ['pass']
 * history.close();
 */
export async function openHistory(
  path: string,
  { create = true }: HistoryOptions = {},
): Promise<History> {
  if (!create && !existsSync(path))
    throw new InputError('missing-file', path, `There is no file ${path}.`);
  let database: Database | undefined;
  try {
    database = await openDatabase(path);
    await prepared(database, path);
    return opened(database, path);
  } catch (error) {
    database?.close();
    throw refusalOf(error, path);
  }
}

async function prepared(database: Database, path: string): Promise<void> {
  database.exec(`PRAGMA busy_timeout = ${patience}; PRAGMA foreign_keys = ON`);
  const read = (name: string): unknown =>
    Object.values(database.prepare(`PRAGMA ${name}`).get() as object)[0];
  const tables = database.prepare('SELECT count(*) AS tables FROM sqlite_schema').get();
  const isNew = (tables as { tables: number }).tables === 0;
  if (!isNew && read('application_id') !== applicationId) throw otherFile(path);
  if (!isNew && read('quick_check') !== 'ok') throw damaged(path);
  await untilFree(() => database.exec('PRAGMA journal_mode = WAL'));
  // What is committed outlives a loss of power.
  database.exec('PRAGMA synchronous = FULL');
  if (read('user_version') === schemaVersion) return;
  inTransaction(database, () => {
    // Another process may have been first.
    const version = Number(read('user_version'));
    if (version > schemaVersion) throw newer(path);
    if (version < schemaVersion) migrate(database, version);
  });
}

/** A change of the journal is refused at once while another process opens the file, whatever patience it has. */
async function untilFree(change: () => void): Promise<void> {
  const begun = performance.now();
  for (;;) {
    try {
      change();
      return;
    } catch (error) {
      const isBusy = sqliteFault(error) === 'BUSY' || sqliteFault(error) === 'LOCKED';
      if (!isBusy || performance.now() - begun > patience) throw error;
      await wait(5);
    }
  }
}

function inTransaction<Result>(database: Database, work: () => Result): Result {
  database.exec('BEGIN IMMEDIATE');
  try {
    const result = work();
    database.exec('COMMIT');
    return result;
  } catch (error) {
    try {
      database.exec('ROLLBACK');
    } catch {
      // A full disk has rolled it back already.
    }
    throw error;
  }
}

function opened(database: Database, path: string): History {
  const find = database.prepare('SELECT data FROM record WHERE sensor = ? AND recording = ?');
  const insert = database.prepare(
    'INSERT INTO record (sensor, recording, data, verdict, at) VALUES (?, ?, ?, ?, ?)',
  );
  const update = database.prepare(
    'UPDATE record SET data = ?, verdict = ?, at = ? WHERE sensor = ? AND recording = ?',
  );
  const list = database.prepare(`
    SELECT sensor, count(*) AS records, min(at) AS earliest, max(at) AS latest,
      (SELECT verdict FROM record AS one WHERE one.sensor = record.sensor ORDER BY at DESC LIMIT 1) AS verdict
    FROM record GROUP BY sensor ORDER BY sensor
  `);
  const ofSensor = database.prepare(
    'SELECT data FROM record WHERE sensor = ? ORDER BY at IS NULL, at, recording',
  );
  const told = <Result>(work: () => Result): Result => {
    try {
      return work();
    } catch (error) {
      throw refusalOf(error, path);
    }
  };
  const addOne = (record: HistoryRecord): keyof Added => {
    const row = find.get(record.sensor, record.recording) as { data: string } | undefined;
    const there = row && (JSON.parse(row.data) as HistoryRecord);
    const joined = there ? joinedRecord(there, record) : record;
    if (joined === there) return 'known';
    const data = JSON.stringify(joined);
    if (there) update.run(data, joined.verdict, atOf(joined), joined.sensor, joined.recording);
    else insert.run(joined.sensor, joined.recording, data, joined.verdict, atOf(joined));
    return there ? 'replaced' : 'added';
  };
  return {
    add: (records) => {
      records.forEach((record, i) => {
        checkRecord(record, `records[${i}]`);
      });
      const counts = { added: 0, replaced: 0, known: 0 };
      told(() =>
        inTransaction(database, () => {
          for (const record of records) counts[addOne(record)] += 1;
        }),
      );
      return counts;
    },
    sensors: () =>
      told(() =>
        (list.all() as ListedRow[]).map(({ sensor, records, verdict, earliest, latest }) => ({
          sensor,
          records,
          verdict,
          ...(earliest !== null && { from: earliest }),
          ...(latest !== null && { to: latest }),
        })),
      ),
    records: (sensor) =>
      told(() => (ofSensor.all(sensor) as { data: string }[]).map(({ data }) => JSON.parse(data))),
    close: () => {
      database.close();
    },
  };
}

interface ListedRow {
  readonly sensor: string;
  readonly records: number;
  readonly verdict: Verdict;
  readonly earliest: number | null;
  readonly latest: number | null;
}

function refusalOf(error: unknown, path: string): unknown {
  switch (sqliteFault(error)) {
    case 'NOTADB':
    case 'CORRUPT':
      return damaged(path);
    case 'READONLY':
    case 'FULL':
    case 'IOERR':
      return new InputError(
        'cannot-write',
        path,
        `${path} could not be written (${(error as Error).message}); what was in it before is unchanged.`,
      );
    case 'CANTOPEN':
      return new InputError(
        'unreadable-file',
        path,
        `${path} could not be opened: it and its folder must be readable and writable.`,
      );
    case 'BUSY':
    case 'LOCKED':
      return new InputError(
        'cannot-write',
        path,
        `Another process has held ${path} for half a minute; what was in it is unchanged. Try again.`,
      );
    default:
      return error;
  }
}

function damaged(path: string): InputError {
  return new InputError(
    'unreadable-file',
    path,
    `${path} is damaged, or no history. What can be read of it is saved by \`truesweep history --store … --save saved.jsonl\`, or saveHistory of the library.`,
  );
}

function otherFile(path: string): InputError {
  return new InputError(
    'unreadable-file',
    path,
    `${path} is a database of another program, no history of truesweep; nothing in it was changed.`,
  );
}

function newer(path: string): InputError {
  return new InputError(
    'newer-version',
    path,
    `A newer truesweep made ${path}; open it with that one. Nothing in it was changed.`,
  );
}
