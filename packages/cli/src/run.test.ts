import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { simulateSweep } from '@truesweep/core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from './run.js';

let folder: string;
const at = (name: string) => join(folder, name);

const job = {
  version: 1,
  title: 'Spare sensor',
  sensor: {
    name: 'Outboard throttle sensor',
    track: '5k',
    closedPosition: '10 %',
    openPosition: '90 %',
    tolerances: { closedPosition: '2 %', openPosition: '2 %' },
  },
  hookUp: { source: { volts: '5 V' }, limiter: '1k' },
  instrument: { name: 'Bench logger', inputResistance: '10M' },
  recordings: [{ file: 'sound.csv' }, { file: 'odd.txt', timeColumn: 1, signalColumn: 0 }],
};

/** A recording of a sound sensor by a recorder of the given sample interval. */
function recording(interval: number): { time: Float64Array; signal: Float64Array } {
  return simulateSweep({
    circuit: {
      source: { volts: 5 },
      limiter: 1000,
      sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
      load: { pullDown: 10e6 },
    },
    movements: [
      { kind: 'hold', seconds: 0.4 },
      ...[1, 2, 3].flatMap(
        () =>
          [
            { kind: 'turn', to: 1, seconds: 1 },
            { kind: 'hold', seconds: 0.4 },
            { kind: 'turn', to: 0, seconds: 1 },
            { kind: 'hold', seconds: 0.4 },
          ] as const,
      ),
    ],
    recorder: { interval, noise: 0.001, resolution: 0.001 },
    seed: 7,
  }).sweep;
}

const rowsOf = (interval: number, row: (time: string, signal: string) => string) => {
  const { time, signal } = recording(interval);
  return Array.from(time, (t, i) => `${row(t.toFixed(3), signal[i]!.toFixed(3))}\n`).join('');
};

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'truesweep-cli-'));
  await writeFile(at('job.json'), JSON.stringify(job));
  await writeFile(at('bare.json'), JSON.stringify({ ...job, recordings: [] }));
  await writeFile(
    at('sound.csv'),
    rowsOf(0.002, (time, signal) => `${time},${signal}`),
  );
  await writeFile(
    at('odd.txt'),
    rowsOf(0.002, (time, signal) => `${signal};${time}`),
  );
  await writeFile(
    at('slow.csv'),
    rowsOf(0.05, (time, signal) => `${time},${signal}`),
  );
  await writeFile(
    at('flat.csv'),
    rowsOf(0.002, (time) => `${time},2.500`),
  );
  await writeFile(at('backwards.csv'), '0,1\n1,1\n0.5,1\n');
  await writeFile(at('one.csv'), '0,1\n');
  await writeFile(at('empty.csv'), '');
  await writeFile(at('words.csv'), 'no numbers\nin here\n');
  await writeFile(at('binary.csv'), Uint8Array.of(0, 1, 2, 255, 0, 3));
  await writeFile(at('still.csv'), '1,1\n1,1\n1,1\n');
});
afterAll(() => rm(folder, { recursive: true }));

async function truesweep(...args: string[]) {
  let out = '';
  let err = '';
  const code = await run(args, {
    print: (text) => {
      out += text;
    },
    printError: (text) => {
      err += text;
    },
  });
  return { code, out, err };
}

const score = (...args: string[]) => truesweep('score', '--job', at('job.json'), ...args);

describe('exit codes', () => {
  test('0 when the work was done, whatever the verdict', async () => {
    for (const file of ['sound.csv', 'slow.csv', 'flat.csv']) {
      const { code, err } = await score(at(file));
      expect({ file, code, err }).toEqual({ file, code: 0, err: '' });
    }
  });

  test.each([
    [['sound.csv'], 0],
    [['flat.csv'], 11],
    [['slow.csv'], 12],
    [['sound.csv', 'slow.csv'], 12],
    [['flat.csv', 'slow.csv', 'sound.csv'], 11],
  ])('%j with --exit-by-verdict: %i', async (files, code) => {
    expect((await score('--exit-by-verdict', ...files.map(at))).code).toBe(code);
  });

  test.each([
    'backwards.csv',
    'one.csv',
    'empty.csv',
    'words.csv',
    'binary.csv',
    'missing.csv',
    'still.csv',
    '.',
  ])('2 for %s, with nothing printed but what was wrong', async (file) => {
    const { code, out, err } = await score(at('sound.csv'), at(file), '--exit-by-verdict');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^truesweep: .*\. \([a-z-]+\)\n$/);
    expect(err).toContain(at(file));
  });

  test.each([
    [[], 'Usage'],
    [['score', 'a.csv'], '--job'],
    [['scroe'], 'scroe'],
    [['score', '--job', 'a.json', '--loud'], '--loud'],
  ])('2 for the words %j', async (args, said) => {
    const { code, out, err } = await truesweep(...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(said);
  });

  test('0 for help and version', async () => {
    for (const words of [['--help'], ['score', '--help'], ['--version']]) {
      const { code, out, err } = await truesweep(...words);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      expect(out).not.toBe('');
      for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    }
  });
});

describe('bad jobs', () => {
  const withJob = async (text: string) => {
    await writeFile(at('bad.json'), text);
    return truesweep('score', at('sound.csv'), '--job', at('bad.json'));
  };

  test.each([
    ['a negative resistance', JSON.stringify(job).replace('"limiter":"1k"', '"limiter":-5')],
    ['no supply', JSON.stringify(job).replace('"volts":"5 V"', '')],
    ['a limiter that is no number', JSON.stringify(job).replace('"1k"', '"NaN"')],
    ['no JSON', '{ "version": 1 '],
    ['a later version', '{ "version": 9 }'],
    ['a sensor without travel', JSON.stringify(job).replace('"90 %"', '"10 %"')],
  ])('%s: 2, the file named, and nothing printed', async (_, text) => {
    const { code, out, err } = await withJob(text);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^truesweep: .*bad\.json.*\. \([a-z-]+\)\n$/);
  });

  test('a job that lists no recording needs one named', async () => {
    const { code, err } = await truesweep('score', '--job', at('bare.json'));
    expect(code).toBe(2);
    expect(err).toContain('nothing-to-score');
  });
});

describe('what is judged', () => {
  test("the job's own recordings where none is named, read as the job says", async () => {
    const { out } = await score('--json');
    const data = JSON.parse(out);
    expect(data.map(({ file }: { file: string }) => file)).toEqual([
      at('sound.csv'),
      at('odd.txt'),
    ]);
    expect(data[1].reading.columns.time.index).toBe(1);
    expect(data[1].score.verdict).toBe(data[0].score.verdict);
  });

  test('a named file is read as the job says too', async () => {
    const [{ reading }] = JSON.parse((await score('--json', at('odd.txt'))).out);
    expect(reading.columns.signal.index).toBe(0);
  });

  test('--json and the text tell the same', async () => {
    const files = [at('sound.csv'), at('slow.csv')];
    const data: { file: string; score: { verdict: string } }[] = JSON.parse(
      (await score('--json', ...files)).out,
    );
    const { out } = await score(...files);
    for (const { file, score: one } of data)
      expect(out).toContain(`${file}\n  ${one.verdict.toUpperCase()}: `);
    expect(data.map(({ score: one }) => one.verdict)).toEqual(['pass', 'inconclusive']);
  });

  test('the cautions close the text, once, short or not', async () => {
    for (const words of [[], ['--short']]) {
      const { out } = await score(...words, at('sound.csv'), at('slow.csv'));
      expect(out.match(/Before you connect or refit anything/g)).toHaveLength(1);
    }
  });

  test('a recording that was too slow says how fast it must be', async () => {
    expect((await score('--short', at('slow.csv'))).out).toContain('7.5\u00a0ms');
  });
});
