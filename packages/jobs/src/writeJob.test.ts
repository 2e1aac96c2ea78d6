import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { loadJob } from './loadJob.js';
import { readJob } from './readJob.js';
import { saveJob } from './saveJob.js';
import { writeJob } from './writeJob.js';

const example = 'examples/outboard-sensor.job.json';

test('a job that was written is read to the same job', async () => {
  const job = await loadJob(example);
  expect(readJob(writeJob(job))).toEqual(job);
});

test('whatever its texts hold, a saved job is read back', async () => {
  const every = String.fromCharCode(...Array.from({ length: 0x3000 }, (_, code) => code));
  const job = { ...(await loadJob(example)), title: `${every}\ud83d \udca9 "\\`, notes: '\u009b' };
  expect(readJob(writeJob(job))).toEqual(job);
});

test('a job is saved, and nothing is overwritten without being asked to', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'truesweep-job-'));
  const path = join(folder, 'one.job.json');
  const job = await loadJob(example);
  await saveJob(path, job);
  const other = { ...job, title: 'Another' };
  await expect(saveJob(path, other)).rejects.toMatchObject({ code: 'file-exists', path });
  expect(await loadJob(path)).toEqual(job);
  await saveJob(path, other, { overwrite: true });
  expect(await readFile(path, 'utf8')).toBe(writeJob(other));
  await rm(folder, { recursive: true });
});
