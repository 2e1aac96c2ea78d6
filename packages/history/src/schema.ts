import { dateSeconds } from './dates.js';
import type { HistoryRecord } from './historyRecord.js';
import type { Database } from './sqlite.js';

/** Marks a file as a history: "tswh" in ASCII. */
export const applicationId = 0x74737768;

/** One step each to the next version of the tables, by which any older file becomes a current one. */
const steps: readonly ((database: Database) => void)[] = [
  (database) => {
    database.exec(`
      CREATE TABLE record (
        sensor TEXT NOT NULL,
        recording TEXT NOT NULL,
        data TEXT NOT NULL,
        PRIMARY KEY (sensor, recording)
      ) STRICT
    `);
  },
  // Sensors are listed, and their records put in order, without reading every record's text.
  (database) => {
    database.exec(`
      ALTER TABLE record ADD COLUMN verdict TEXT NOT NULL DEFAULT '';
      ALTER TABLE record ADD COLUMN at REAL;
      CREATE INDEX record_by_date ON record (sensor, at, verdict);
    `);
    const fill = database.prepare(
      'UPDATE record SET verdict = ?, at = ? WHERE sensor = ? AND recording = ?',
    );
    for (const row of database.prepare('SELECT data FROM record').all()) {
      const record = JSON.parse((row as { data: string }).data) as HistoryRecord;
      fill.run(record.verdict, atOf(record), record.sensor, record.recording);
    }
  },
];

/** The version of the tables that this truesweep writes. */
export const schemaVersion = steps.length;

/** Brings the tables from one version to another, the current one when left out; inside a transaction of the caller's. */
export function migrate(database: Database, from: number, to = schemaVersion): void {
  for (const step of steps.slice(from, to)) step(database);
  database.exec(`PRAGMA application_id = ${applicationId}; PRAGMA user_version = ${to}`);
}

/** When a record was made, s since 1970; null where that is not known. */
export function atOf({ date }: HistoryRecord): number | null {
  return (date === undefined ? undefined : dateSeconds(date)) ?? null;
}
