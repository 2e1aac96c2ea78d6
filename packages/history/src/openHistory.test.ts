import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import type { HistoryRecord } from './historyRecord.js';
import { openHistory } from './openHistory.js';
import { saveHistory } from './saveHistory.js';
import { migrate, schemaVersion } from './schema.js';
import { openDatabase } from './sqlite.js';

const folder = mkdtempSync(join(tmpdir(), 'truesweep-history-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let files = 0;
const fresh = () => join(folder, `${files++}.history`);

const record = (season: number, more: Partial<HistoryRecord> = {}): HistoryRecord => ({
  kind: 'truesweep-record',
  form: 1,
  sensor: 'Port engine',
  recording: String(season).padStart(64, '0'),
  date: `${2000 + (season % 1000)}-05-03`,
  dateFrom: 'told',
  file: `port ${season} “spare” {.csv`,
  verdict: 'pass',
  noise: 0.001,
  visible: 0.02,
  roughness: 0,
  findings: 0,
  recorder: { interval: 0.001, resolution: 0.001 },
  ...more,
});

const refusal = async (run: () => unknown) => {
  try {
    await run();
  } catch (error) {
    return error as { code: string; message: string; path: string };
  }
  throw new Error('nothing was refused');
};

test('keeps what is added, once each, by date, over closing and opening', async () => {
  const path = fresh();
  const history = await openHistory(path);
  expect(history.add([record(24), record(22), record(23)])).toEqual({
    added: 3,
    replaced: 0,
    known: 0,
  });
  const { date: _, ...undated } = record(7);
  expect(history.add([record(22), record(23, { verdict: 'fail' }), undated])).toEqual({
    added: 1,
    replaced: 1,
    known: 1,
  });
  history.close();
  const again = await openHistory(path, { create: false });
  expect(
    again.records('Port engine').map(({ recording, verdict }) => [Number(recording), verdict]),
  ).toEqual([
    [22, 'pass'],
    [23, 'fail'],
    [24, 'pass'],
    [7, 'pass'],
  ]);
  again.add([record(24, { sensor: 'Starboard', verdict: 'marginal' })]);
  expect(again.sensors()).toEqual([
    { sensor: 'Port engine', records: 4, verdict: 'pass', from: 1651536000, to: 1714694400 },
    { sensor: 'Starboard', records: 1, verdict: 'marginal', from: 1714694400, to: 1714694400 },
  ]);
  expect(again.records('Nobody')).toEqual([]);
  again.close();
  expect(
    readdirSync(folder).filter((name) => name.startsWith(path.split('/').at(-1)!)),
  ).toHaveLength(1);
});

test('a record that is none stops all of them', async () => {
  const history = await openHistory(fresh());
  const wrong = record(2, { recording: 'short' });
  expect(await refusal(() => history.add([record(1), wrong]))).toMatchObject({
    code: 'not-a-hash',
    path: 'records[1].recording',
  });
  expect(history.records('Port engine')).toEqual([]);
  history.close();
});

test('a history of every older schema becomes a current one with all that was in it', async () => {
  for (let version = 1; version < schemaVersion; version++) {
    const path = fresh();
    const old = await openDatabase(path);
    migrate(old, 0, version);
    const insert = old.prepare('INSERT INTO record (sensor, recording, data) VALUES (?, ?, ?)');
    const { date: _, ...undated } = record(4);
    const there = [
      record(1),
      record(2, { verdict: 'fail' }),
      record(3, { sensor: 'Spare' }),
      undated,
    ];
    for (const one of there) insert.run(one.sensor, one.recording, JSON.stringify(one));
    old.close();
    const history = await openHistory(path);
    expect(history.sensors()).toEqual([
      {
        sensor: 'Port engine',
        records: 3,
        verdict: 'fail',
        from: expect.any(Number),
        to: expect.any(Number),
      },
      {
        sensor: 'Spare',
        records: 1,
        verdict: 'pass',
        from: expect.any(Number),
        to: expect.any(Number),
      },
    ]);
    expect([...history.records('Port engine'), ...history.records('Spare')]).toEqual(
      expect.arrayContaining(there),
    );
    history.close();
    const database = await openDatabase(path);
    expect(database.prepare('PRAGMA user_version').get()).toMatchObject({
      user_version: schemaVersion,
    });
    database.close();
  }
});

test('what is no history, or a newer one, is refused and left as it is', async () => {
  const text = fresh();
  writeFileSync(text, 'time,signal\n'.repeat(200));
  expect(await refusal(() => openHistory(text))).toMatchObject({
    code: 'unreadable-file',
    path: text,
  });
  const other = fresh();
  const database = await openDatabase(other);
  database.exec('CREATE TABLE engine (name TEXT)');
  database.close();
  const before = readFileSync(other);
  expect(await refusal(() => openHistory(other))).toMatchObject({
    code: 'unreadable-file',
    message: expect.stringContaining('another program'),
  });
  expect(readFileSync(other).equals(before)).toBe(true);
  const newer = fresh();
  (await openHistory(newer)).close();
  const raised = await openDatabase(newer);
  raised.exec(`PRAGMA user_version = ${schemaVersion + 1}`);
  raised.close();
  expect(await refusal(() => openHistory(newer))).toMatchObject({ code: 'newer-version' });
  const nowhere = join(folder, 'nowhere', 'x.history');
  expect(await refusal(() => openHistory(nowhere))).toMatchObject({ code: 'unreadable-file' });
  expect(await refusal(() => openHistory(nowhere, { create: false }))).toMatchObject({
    code: 'missing-file',
  });
});

test('a damaged history is refused, and what stands whole in it is saved', async () => {
  const path = fresh();
  const history = await openHistory(path);
  const all = Array.from({ length: 600 }, (_, i) =>
    record(i, { note: 'spray on the connector }"{' }),
  );
  history.add(all);
  history.add(all.slice(0, 300).map((one) => ({ ...one, verdict: 'marginal' as const })));
  history.close();
  const whole = readFileSync(path);
  const pages = whole.length / 4096;
  const kept: number[] = [];
  // The header, pages amid the tables, or the end is lost.
  for (const spoil of [
    (bytes: Buffer) => bytes.fill(0xa5, 0, 100),
    (bytes: Buffer) =>
      bytes.fill(0xa5, 4096 * Math.floor(pages / 2), 4096 * Math.floor(pages / 2 + 3)),
    (bytes: Buffer) => bytes.subarray(0, 4096 * Math.floor(pages * 0.8)),
  ]) {
    const spoiled = fresh();
    writeFileSync(spoiled, spoil(Buffer.from(whole)));
    expect(await refusal(() => openHistory(spoiled))).toMatchObject({
      code: 'unreadable-file',
      message: expect.stringContaining('damaged'),
    });
    const saved = await saveHistory(spoiled);
    const places = saved.map(({ recording }) => Number(recording));
    expect(new Set(places).size).toBe(saved.length);
    expect(places.every((place) => place >= 0 && place < 600)).toBe(true);
    kept.push(saved.length);
    const mended = await openHistory(fresh());
    expect(mended.add(saved)).toMatchObject({ added: saved.length });
    mended.close();
  }
  console.log(
    `saved of 600 records: ${kept.join(', ')} with the header, three pages, a fifth at the end lost`,
  );
  expect(kept[0]).toBe(600);
  expect(kept[1]).toBeGreaterThan(540);
  expect(kept[2]).toBeGreaterThan(400);
  expect(await saveHistory(path)).toEqual(
    expect.arrayContaining([
      record(0, { note: 'spray on the connector }"{', verdict: 'marginal' }),
    ]),
  );
});
