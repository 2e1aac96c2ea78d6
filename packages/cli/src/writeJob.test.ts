import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { loadJob } from '@truesweep/jobs/node';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runTruesweep } from '../../../tests/runTruesweep.js';

let folder: string;
const at = (name: string) => join(folder, name);
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'truesweep-write-job-'));
});
afterAll(() => rm(folder, { recursive: true }));

/** Runs the command; on a terminal it is answered line by line, and then the input ends. */
async function writeJob(words: readonly string[], answers?: readonly string[]) {
  const asked: string[] = [];
  const left = [...(answers ?? [])];
  const ran = await runTruesweep(
    ['write-job', ...words],
    answers && {
      questions: () => ({
        ask: async (question: string) => {
          asked.push(question);
          return left.shift();
        },
        end: () => {},
      }),
    },
  );
  return { ...ran, asked, left };
}

const all = [
  ...['--title', 'Spare sensor', '--sensor', 'Outboard sensor', '--track', '5k'],
  ...['--source', '5 V', '--limiter', '1k', '--instrument', 'Logger', '--input-resistance', '10M'],
];

describe('from options', () => {
  test('a job is written as others are read', async () => {
    const { code, out, err } = await writeJob([
      ...all,
      ...['--out', at('whole.json'), '--closed-at', '10 %', '--open-at', '90%'],
      ...['--track-tolerance', '±20 %', '--resolution', '1 mV', '--pull-down', '100k'],
    ]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain(at('whole.json'));
    expect(await loadJob(at('whole.json'))).toEqual({
      version: 3,
      title: 'Spare sensor',
      sensor: {
        kind: 'potentiometer',
        name: 'Outboard sensor',
        track: 5000,
        closedPosition: 0.1,
        openPosition: 0.9,
        tolerances: { track: 0.2 },
      },
      hookUp: { source: { volts: 5 }, limiter: 1000, pullDown: 100e3 },
      instrument: { name: 'Logger', inputResistance: 10e6, resolution: 0.001 },
    });
  });

  test('everything that is missing is told at once, and nothing written', async () => {
    const { code, err, out } = await writeJob(['--out', at('none.json'), '--track', '5k']);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    for (const name of ['--title', '--sensor', '--source', '--limiter', '--instrument'])
      expect(err).toContain(`${name} <`);
    expect(err).not.toContain('--track <');
    expect(err).toMatch(/\(missing\)\n$/);
    expect(existsSync(at('none.json'))).toBe(false);
  });

  test('every wrong value is told by its option', async () => {
    const words = [...all, '--out', at('none.json'), '--limiter', '5 V', '--closed-at', '200 %'];
    const { code, err } = await writeJob(words);
    expect(code).toBe(2);
    expect(err).toMatch(/^truesweep: --limiter: --limiter .*--closed-at /);
    expect(existsSync(at('none.json'))).toBe(false);
  });

  test('a file that is there is replaced only where that is said, and never a recording', async () => {
    await writeFile(at('mine.csv'), '0,1\n');
    await writeFile(at('old.json'), 'old');
    const kept = await writeJob([...all, '--out', at('old.json')]);
    expect(kept.err).toContain('(file-exists)');
    expect(await readFile(at('old.json'), 'utf8')).toBe('old');
    expect((await writeJob([...all, '--out', at('old.json'), '--overwrite'])).code).toBe(0);
    const over = ['--out', at('mine.csv'), '--overwrite', '--recording', at('mine.csv')];
    expect((await writeJob([...all, ...over])).err).toContain('(output-is-input)');
    expect(await readFile(at('mine.csv'), 'utf8')).toBe('0,1\n');
  });

  test('recordings are named from the job’s folder', async () => {
    await mkdir(at('jobs'));
    const recordings = ['--recording', at('mine.csv'), '--recording', at('jobs/b.csv')];
    await writeJob([...all, ...recordings, '--out', at('jobs/two.json')]);
    const { recordings: listed } = await loadJob(at('jobs/two.json'));
    expect(listed).toEqual([{ file: '../mine.csv' }, { file: 'b.csv' }]);
  });
});

describe('asked on a terminal', () => {
  const answers = ['Spare sensor', 'Outboard sensor', '5k', '5 V', '1k', 'Logger', '10M'];
  const nothing = Array.from({ length: 7 }, () => '');

  test('a question a field, with unit and example; what may be left out is left out', async () => {
    const { code, asked, left } = await writeJob(
      ['--out', at('asked.json')],
      [...answers, ...nothing],
    );
    expect(code).toBe(0);
    expect(left).toEqual([]);
    expect(asked).toHaveLength(14);
    for (const question of asked) expect(question).toMatch(/such as .*: $/s);
    expect(asked[2]).toMatch(/Ω/);
    expect(await loadJob(at('asked.json'))).toMatchObject({ title: 'Spare sensor' });
  });

  test('what options say is not asked', async () => {
    const { code, asked } = await writeJob([...all, '--out', at('told.json')], nothing);
    expect(code).toBe(0);
    expect(asked).toHaveLength(0);
  });

  test('a wrong answer is refused aloud, and asked again', async () => {
    const [title, sensor, track, ...more] = answers;
    const told = [title!, '', sensor!, '5 V', track!, ...more, ...nothing];
    const { code, asked, err } = await writeJob(['--out', at('again.json')], told);
    expect(code).toBe(0);
    expect(asked).toHaveLength(16);
    expect(err).toMatch(/must be a text that isn't empty/);
    expect(err).toContain('(wrong-unit)');
  });

  test('an end closed as the other is refused where it is told', async () => {
    const told = [...answers, '10 %', '10 %', '90 %', '', '', '', '', ''];
    const { code, err } = await writeJob(['--out', at('ends.json')], told);
    expect(code).toBe(0);
    expect(err).toContain('(no-travel)');
  });

  test('nothing is written where the answers end early', async () => {
    const { code, err } = await writeJob(['--out', at('early.json')], answers.slice(0, 3));
    expect(code).toBe(2);
    expect(err).toMatch(/nothing was written/i);
    expect(existsSync(at('early.json'))).toBe(false);
  });

  test('nothing is asked for a file that may not be written', async () => {
    await writeFile(at('there.json'), 'old');
    const { err, asked } = await writeJob(['--out', at('there.json')], answers);
    expect(err).toContain('(file-exists)');
    expect(asked).toEqual([]);
  });
});
