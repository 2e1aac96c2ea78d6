import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { openHistory, saveHistory } from '@truesweep/history/node';
import { afterAll, expect, test } from 'vitest';
import { randomStream } from '../corpus/simulator/randomStream.js';
import { soak } from '../counts.js';

const folder = mkdtempSync(join(tmpdir(), 'truesweep-processes-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const program = fileURLToPath(new URL('writeRecords.mjs', import.meta.url));

/** Begins a process that adds records of a sensor, one after the other. */
function writer(path: string, sensor: string, count: number, under: readonly string[] = []) {
  const [command = process.execPath, ...args] = [
    ...under,
    process.execPath,
    program,
    path,
    sensor,
    String(count),
  ];
  const child = spawn(command, args, { stdio: ['ignore', 'pipe', 'pipe'] });
  let told = '';
  let error = '';
  child.stdout.on('data', (text) => {
    told += text;
  });
  child.stderr.on('data', (text) => {
    error += text;
  });
  const ended = new Promise<number | null>((done) => child.on('close', done));
  return {
    child: child as ChildProcess,
    ended,
    kept: () => told.split('\n').length - 1,
    error: () => error,
  };
}

const wholeRecords = async (path: string, sensor: string) => {
  const history = await openHistory(path);
  const records = history.records(sensor);
  history.close();
  return records.map(({ recording }) => Number.parseInt(recording, 16)).sort((a, b) => a - b);
};

test('two processes that open one new file and write at once lose nothing: 1,000 records each', async () => {
  const path = join(folder, 'two.history');
  const writers = ['Port engine', 'Starboard engine'].map((sensor) => writer(path, sensor, 1000));
  for (const one of writers) expect([await one.ended, one.error()]).toEqual([0, '']);
  const all = Array.from({ length: 1000 }, (_, i) => i);
  expect(await wholeRecords(path, 'Port engine')).toEqual(all);
  expect(await wholeRecords(path, 'Starboard engine')).toEqual(all);
}, 120_000);

test('killed at random moments it keeps every record that it told of, and goes on', async () => {
  const random = randomStream(12);
  const path = join(folder, 'killed.history');
  let told = 0;
  for (let run = 0; run < 10 * soak; run++) {
    const one = writer(path, `Sensor ${run}`, 100_000);
    while (one.kept() === 0) await wait(2);
    await wait(120 * random.uniform());
    one.child.kill('SIGKILL');
    await one.ended;
    const records = await wholeRecords(path, `Sensor ${run}`);
    // The last may have been kept before it could be told of.
    expect(records.length).toBeGreaterThanOrEqual(one.kept());
    expect(records.length).toBeLessThanOrEqual(one.kept() + 1);
    expect(records).toEqual(records.map((_, i) => i));
    told += records.length;
  }
  expect(told).toBeGreaterThan(10);
}, 120_000);

test('a file that may not grow: a clear sentence, and what was kept stays', async () => {
  const path = join(folder, 'full.history');
  const one = writer(path, 'Port engine', 100_000, ['bash', '-c', 'ulimit -f 300; "$@"', 'bash']);
  expect(await one.ended).not.toBe(0);
  expect(one.error()).toMatch(/full\.history could not be written/);
  const records = await wholeRecords(path, 'Port engine');
  expect(records.length).toBeGreaterThanOrEqual(one.kept());
  expect(one.kept()).toBeGreaterThan(10);
}, 120_000);

test('what was written ahead and not yet carried over is saved with the rest of a damaged file', async () => {
  const path = join(folder, 'ahead.history');
  const one = writer(path, 'Port engine', 100_000);
  while (one.kept() < 300) await wait(5);
  one.child.kill('SIGKILL');
  await one.ended;
  const bytes = readFileSync(path);
  writeFileSync(path, bytes.fill(0, 0, 4096));
  const saved = await saveHistory(path);
  expect(saved.length).toBeGreaterThanOrEqual(one.kept());
}, 120_000);
