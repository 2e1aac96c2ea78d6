import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { HistoryRecord } from '@truesweep/history';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { runTruesweep } from '../../../../tests/runTruesweep.js';

const folder = mkdtempSync(join(tmpdir(), 'truesweep-history-command-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string) => join(folder, name);

const record = (sensor: string, season: number, closed: number): HistoryRecord => ({
  kind: 'truesweep-record',
  form: 1,
  sensor,
  recording: `${season}`.padStart(64, '0'),
  date: `${2022 + season}-05-03`,
  dateFrom: 'told',
  file: `${sensor} ${season}.csv`,
  verdict: season === 3 && sensor === 'Port engine' ? 'marginal' : 'pass',
  closed: { volts: closed, uncertainty: 0.001, low: 0.44, high: 0.56 },
  open: { volts: 4.5, uncertainty: 0.001, low: 4.3, high: 4.7 },
  noise: 0.001,
  visible: 0.02,
  roughness: 0,
  findings: 0,
  recorder: { interval: 0.001, resolution: 0.001 },
});

const drifting = [0.5, 0.511, 0.519, 0.53].map((volts, i) => record('Port engine', i, volts));
const still = [0.501, 0.5, 0.502, 0.5].map((volts, i) => record('Tender', i, volts));
const { date: _, dateFrom: __, ...undated } = record('Tender', 7, 0.5);

beforeAll(() => {
  const lines = [...drifting, ...still, undated].map((one) => `${JSON.stringify(one)}\n`);
  writeFileSync(at('season.jsonl'), `${lines.join('')}{"cut\n`);
});

test('adds what is new, says what is damaged, and lists those with a change first', async () => {
  const args = ['history', at('season.jsonl'), '--store', at('workshop.history')];
  const { code, out, err } = await runTruesweep(args);
  expect(code).toBe(0);
  expect(err).toContain('line 10: This line is no JSON. It is left out.');
  expect(err).toContain('9 records added');
  const rows = out.split('\n').slice(1, 3);
  expect(rows[0]).toMatch(/^ {2}Port engine +4 {2}2022-05-03 {2}2025-05-03 {2}Marginal +closed$/);
  expect(rows[1]).toMatch(/^ {2}Tender +5 {2}2022-05-03 {2}2025-05-03 {2}Pass +none told$/);
  const again = await runTruesweep(args);
  expect(again.err).toContain('0 records added');
  expect(again.err).toContain('9 known before');
  expect(again.out).toBe(out);
});

test('without a store it only looks', async () => {
  const { out, err } = await runTruesweep(['history', at('season.jsonl')]);
  expect(out).toContain('Port engine');
  expect(err).not.toContain('added');
});

test('results that lie file by file in folders within are read together', async () => {
  for (const one of [...drifting, ...still]) {
    const within = at(join('filed', one.sensor, String(Number(one.recording))));
    mkdirSync(within, { recursive: true });
    writeFileSync(join(within, 'a.json'), `${JSON.stringify(one)}\n`);
  }
  const { out } = await runTruesweep(['history', at('filed'), '--json']);
  expect(JSON.parse(out).sensors).toMatchObject([
    { records: 4, changed: ['closed'] },
    { records: 4 },
  ]);
});

test('of one sensor all records, each change with its uncertainty, its forecast and its limit', async () => {
  const { out } = await runTruesweep([
    'history',
    '--store',
    at('workshop.history'),
    '--sensor',
    'Port engine',
  ]);
  expect(out).toMatch(/2022-05-03 {2}Pass +500\.0.mV {2}4\.500.V/);
  // 10 mV a year of a span of 4 V; the limit lies 60 mV above the middle.
  expect(out).toMatch(/Closed +Rises by 0\.2[45] ± 0\.\d+ % of the span a year/);
  const words = out.replace(/\s+/g, ' ');
  expect(words).toContain('recording on 2028-05-03 would read');
  expect(words).toContain('Its upper limit may be met on 202');
  expect(words).toMatch(
    /Open No change that these recordings can show; it would have to exceed 0\.\d+ % of the span a year\./,
  );
});

test('as data', async () => {
  const store = ['--store', at('workshop.history'), '--json'];
  const { sensors } = JSON.parse((await runTruesweep(['history', ...store])).out);
  expect(sensors).toMatchObject([
    { sensor: 'Port engine', records: 4, verdict: 'marginal', changed: ['closed'] },
    { sensor: 'Tender', records: 5, verdict: 'pass', changed: [] },
  ]);
  const { out } = await runTruesweep(['history', ...store, '--sensor', 'Tender']);
  expect(JSON.parse(out)).toMatchObject({ sensor: 'Tender', undated: 1, coverage: 0.95 });
});

test('what is wrong is refused with what would be right', async () => {
  const refused = async (...args: string[]) => {
    const { code, err } = await runTruesweep(['history', ...args]);
    expect(code).toBe(2);
    return err;
  };
  expect(await refused()).toContain('--store');
  expect(await refused('--store', at('nowhere.history'))).toContain('There is no file');
  expect(await refused('--store', at('workshop.history'), '--sensor', 'Port engin')).toContain(
    'is “Port engine” meant?',
  );
  mkdirSync(at('empty'));
  expect(await refused(at('empty'))).toContain('There are no results in');
  expect(await refused('--store', at('season.jsonl'))).toContain('no history');
  expect(
    await refused('--store', at('workshop.history'), '--save', at('workshop.history')),
  ).toContain('workshop.history');
});

test('a damaged history is saved and added to a new one', async () => {
  writeFileSync(at('damaged.history'), readFileSync(at('workshop.history')).fill(0, 0, 64));
  const saved = await runTruesweep([
    'history',
    '--store',
    at('damaged.history'),
    '--save',
    at('saved.jsonl'),
  ]);
  expect(saved.out).toContain('9 records saved');
  const { err } = await runTruesweep(['history', at('saved.jsonl'), '--store', at('new.history')]);
  expect(err).toContain('9 records added');
});
