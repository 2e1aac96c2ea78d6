import { appendFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { defaultCriteria, scoreSweep } from '@truesweep/core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Job } from './job.js';
import type { JudgedRecording, RefusedRecording } from './judgedRecording.js';
import { judgementBasis } from './judgementBasis.js';
import { type JudgeOptions, judgeOne } from './judgeOne.js';
import { loadJob } from './loadJob.js';
import { parseJob } from './parseJob.js';
import { readJobRecording } from './readJobRecording.js';

const worn = 'examples/recordings/worn.csv';
let folder = '';
let job: Job;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'truesweep-one-'));
  job = await loadJob('examples/outboard-sensor.job.json');
});
afterAll(() => rmSync(folder, { recursive: true }));

type Given = [source: string | Uint8Array, job: Job, options?: JudgeOptions];
const judged = async (...given: Given) => (await judgeOne(...given)) as JudgedRecording;
const refused = async (...given: Given) => (await judgeOne(...given)) as RefusedRecording;
const keyOf = async (text: string, by: Job) =>
  (await judged(new TextEncoder().encode(text), by, { file: 'a.csv' })).key;

test('tells what the score does, and stays the same through JSON', async () => {
  const result = await judged(worn, job, { date: '2026-04-02', note: 'before cleaning' });
  const { sweep, recorder } = readJobRecording(readFileSync(worn), { file: worn }, job);
  const { expected, criteria } = judgementBasis(job);
  const score = scoreSweep(sweep, expected, recorder, criteria);
  const { verdict, confidence, causes, advice, checks, quality } = score;
  expect(result).toMatchObject({ verdict, confidence, causes, advice, checks, quality });
  expect(result).toMatchObject({ date: '2026-04-02', note: 'before cleaning', job: job.title });
  expect(result.findings).toBe(score.findings.length);
  const closed = checks.find(({ check }) => check === 'closed-end')!;
  expect(result.closed).toEqual({ volts: closed.measured, uncertainty: closed.uncertainty });
  expect(result.worst?.spot).toEqual({ passes: 8, seen: 8 });
  expect(JSON.parse(JSON.stringify(result))).toEqual(result);
});

test('bytes and their file are one recording', async () => {
  const { file: _, judgedAt: __, ...ofFile } = await judged(worn, job);
  const { file, judgedAt: ___, ...ofBytes } = await judged(readFileSync(worn), job, { file: 'x' });
  expect(file).toBe('x');
  expect(ofBytes).toEqual(ofFile);
});

describe('the key', () => {
  const text = readFileSync(worn, 'utf8').slice(0, 40_000);

  test('is the same whatever the names and whenever it is judged', async () => {
    const named = parseJob({
      ...structuredClone(job),
      title: 'Another',
      notes: 'and notes',
      recordings: [],
      sensor: { ...job.sensor, name: 'Another' },
      instrument: { ...job.instrument, name: 'Another' },
    });
    expect(await keyOf(text, named)).toBe(await keyOf(text, job));
    const other = parseJob({ ...structuredClone(job), criteria: { dropout: 0.02 } });
    expect(await keyOf(text, other)).not.toBe(await keyOf(text, job));
    // A limit that is named as it is anyhow is the same limit.
    const { dropout } = defaultCriteria;
    const told = parseJob({ ...structuredClone(job), criteria: { dropout } });
    expect(await keyOf(text, told)).toBe(await keyOf(text, job));
  });

  test('is another one for other bytes, another hook-up or another way to read', async () => {
    const hookUp = { ...job.hookUp, limiter: 1001 };
    const keys = [
      await keyOf(text, job),
      await keyOf(`${text}\n`, job),
      await keyOf(text, parseJob({ ...structuredClone(job), hookUp })),
      (
        await judged(new TextEncoder().encode(text), job, {
          file: 'a.csv',
          recording: { text: { timeUnit: 'ms' } },
        })
      ).key,
    ];
    expect(new Set(keys).size).toBe(keys.length);
  });

  test('is asked for before anything is judged', async () => {
    const { key } = await judged(worn, job);
    const asked: string[] = [];
    const isKept = (one: string) => asked.push(one) > 0;
    expect(await judgeOne(worn, job, { isKept })).toBeUndefined();
    expect(asked).toEqual([key]);
  });
});

describe('what can’t be judged', () => {
  const changing = (change: (path: string) => void, text = readFileSync(worn, 'utf8')) => {
    const path = join(folder, 'changing.csv');
    writeFileSync(path, text);
    // Between the two times that its bytes are gone through.
    return judgeOne(path, job, {
      isKept: () => {
        change(path);
        return false;
      },
    }) as Promise<RefusedRecording>;
  };

  test.each([
    ['grows', (path: string) => appendFileSync(path, '99999,0.43\n')],
    [
      'is written anew, as long as before',
      (path: string) => writeFileSync(path, readFileSync(path, 'utf8').replace('0.4', '0.5')),
    ],
    [
      'is cut off',
      (path: string) => writeFileSync(path, readFileSync(path, 'utf8').slice(0, 5000)),
    ],
    ['becomes what is no recording', (path: string) => writeFileSync(path, 'no numbers\n')],
  ])('a recording that %s while it is read, without a key', async (_, change) => {
    const { refused: why, key, sha256 } = await changing(change);
    expect(why).toMatchObject({ code: 'recording-changed' });
    expect(why.sentence).toContain('changed while it was read');
    expect([key, sha256]).toEqual([undefined, undefined]);
  });

  test('what was no recording and becomes one meanwhile', async () => {
    const { refused: why } = await changing(
      (path) => writeFileSync(path, readFileSync(worn)),
      'no numbers\n',
    );
    expect(why.code).toBe('recording-changed');
  });

  test('a file that isn’t there, a folder, one that is too large: no key, for another try may come out otherwise', async () => {
    for (const [source, code] of [
      ['lost.csv', 'missing-file'],
      [folder, 'not-a-file'],
    ] as const) {
      const result = await refused(source, job);
      expect(result.refused.code).toBe(code);
      expect(result.key).toBeUndefined();
    }
    expect((await refused(worn, job, { most: 1000 })).refused.code).toBe('file-too-large');
  });

  test('bytes that are no recording have a key: they are never one', async () => {
    const result = await refused(new Uint8Array(0), job, { file: 'empty.csv' });
    expect(result.refused).toMatchObject({ code: 'empty-file', place: { line: 1 } });
    expect(result.key).toMatch(/^[0-9a-f]{64}$/);
  });

  test('another file than the job names by its hash', async () => {
    const recording = { sha256: '0'.repeat(64) };
    expect((await refused(worn, job, { recording })).refused.code).toBe('recording-changed');
  });
});
