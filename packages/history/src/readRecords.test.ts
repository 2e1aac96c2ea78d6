import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { scoreSweep } from '@truesweep/core';
import { jobCriteria, jobExpectation, readJobRecording } from '@truesweep/jobs';
import { judgeOne, loadJob } from '@truesweep/jobs/node';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readRecords } from './readRecords.js';
import { recordOf } from './recordOf.js';
import { recordsInFile } from './recordsInFile.js';

const folder = mkdtempSync(join(tmpdir(), 'truesweep-records-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const facts = { sensor: ' Port engine ', date: '2026-05-03', note: 'after the winter' };
const path = 'examples/recordings/worn.csv';
let line: string;
let shelf: string;

beforeAll(async () => {
  const job = await loadJob('examples/outboard-sensor.job.json');
  const judged = await judgeOne(path, job, facts);
  const { judgedAt: _, ...kept } = judged;
  line = JSON.stringify(kept);
  const bytes = readFileSync(path);
  const read = readJobRecording(bytes, { file: path }, job);
  const score = scoreSweep(read.sweep, jobExpectation(job), read.recorder, jobCriteria(job));
  shelf = JSON.stringify(
    {
      kind: 'truesweep-shelf',
      version: 1,
      sensors: [
        {
          name: 'Port engine',
          serial: '',
          results: [
            { at: '2026-05-04T10:00:00.000Z', recording: 'worn.csv', sha256: judged.sha256, score },
            { at: 7 },
          ],
        },
        { name: 'without results' },
      ],
    },
    undefined,
    1,
  );
});

test('results of a batch, records, refusals and what is damaged, each with its place', () => {
  const record = JSON.stringify(recordOf(JSON.parse(line)));
  const text = [
    line,
    '',
    record,
    '{"refused":{}}',
    '{"cut',
    '{"kind":"truesweep-record","form":2}',
    '[1]',
  ];
  const { records, notJudged, damaged } = readRecords(text.join('\r\n'), 'season.jsonl');
  expect(records).toHaveLength(2);
  expect(records[0]).toEqual(records[1]);
  expect(records[0]).toMatchObject({
    sensor: 'Port engine',
    date: '2026-05-03',
    dateFrom: 'told',
    note: 'after the winter',
    verdict: 'fail',
    worst: { kind: 'dropout' },
  });
  expect(notJudged).toBe(1);
  expect(damaged.map(({ place }) => place)).toEqual(['line 5', 'line 6', 'line 7']);
});

test('a shelf tells the same of a recording as a batch, but for when it was made', () => {
  const [judged] = readRecords(line, 'a').records;
  const { records, damaged } = readRecords(shelf, 'shelf.json');
  const { note: _, version: __, ...rest } = judged!;
  expect(records).toEqual([
    { ...rest, file: 'worn.csv', date: '2026-05-04T10:00:00.000Z', dateFrom: 'judged' },
  ]);
  expect(damaged.map(({ place }) => place)).toEqual(['sensor 1, result 2', 'sensor 2']);
});

test('a file is read as its text is', async () => {
  for (const text of [`\ufeff${line}\n${line}\n`, shelf]) {
    const file = join(folder, 'results');
    writeFileSync(file, text);
    const entries = [];
    for await (const entry of recordsInFile(file)) entries.push(entry);
    const { records, damaged } = readRecords(text, file);
    expect(entries.flatMap((one) => ('record' in one ? [one.record] : []))).toEqual(records);
    expect(entries.flatMap((one) => ('place' in one ? [one] : []))).toEqual(damaged);
  }
});

test.each(['', 'time,signal\n0,1\n', '{ "version": 3 }\n', '{\n"version": 3 }', '\0\0'])(
  'no results: %j',
  async (text) => {
    const file = join(folder, 'other');
    writeFileSync(file, text);
    const read = async () => {
      const wrong = [];
      for await (const entry of recordsInFile(file)) wrong.push(entry);
      return wrong;
    };
    if (text.startsWith('{ ')) expect(await read()).toMatchObject([{ place: 'line 1' }]);
    else await expect(read()).rejects.toMatchObject({ code: 'not-json', path: file });
  },
);
