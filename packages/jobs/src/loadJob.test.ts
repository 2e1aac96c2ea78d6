import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { loadJob } from './loadJob.js';

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'truesweep-jobs-'));
});
afterAll(() => rm(folder, { recursive: true }));

const job = {
  version: 1,
  title: 'Spare',
  sensor: { name: 'Throttle', track: '4k7' },
  hookUp: { source: { volts: 5 }, limiter: 1000 },
  instrument: { name: 'Logger', inputResistance: '10M' },
};

test('reads a job from its file', async () => {
  const path = join(folder, 'spare.json');
  await writeFile(path, JSON.stringify(job));
  expect((await loadJob(path)).sensor.track).toBe(4700);
});

test('refuses a missing file, a folder, and what is no text', async () => {
  const missing = join(folder, 'missing.json');
  await expect(loadJob(missing)).rejects.toMatchObject({ code: 'missing-file', path: missing });
  await expect(loadJob(folder)).rejects.toMatchObject({ code: 'not-a-file', path: folder });
  const binary = join(folder, 'binary.json');
  await writeFile(binary, Uint8Array.of(0x7b, 0xff, 0xfe, 0x7d));
  await expect(loadJob(binary)).rejects.toMatchObject({ code: 'not-utf-8', path: binary });
});
