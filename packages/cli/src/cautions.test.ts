import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { cautions } from '@truesweep/wording';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runTruesweep } from '../../../tests/runTruesweep.js';

async function truesweep(...args: string[]): Promise<string> {
  const { out } = await runTruesweep(args);
  return out.replaceAll(/\s+/g, ' ');
}

const job = ['--job', 'examples/outboard-sensor.job.json'];
const [sound, worn] = ['sound', 'worn'].map((name) => `examples/recordings/${name}.csv`) as [
  string,
  string,
];
const folder = mkdtempSync(join(tmpdir(), 'truesweep-'));
const report = join(folder, 'sound.html');
const told = (out: string) =>
  Object.entries(cautions)
    .filter(([, sentence]) => out.includes(sentence))
    .map(([name]) => name);
const all = Object.keys(cautions);

beforeAll(async () => {
  await truesweep('report', ...job, '--out', report, sound);
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('the cautions are whole', () => {
  test.each([
    ['plan', ['plan', ...job]],
    ['the help of the program', ['--help']],
    ['the help of a command', ['score', '--help']],
  ])('with %s', async (_, words) => {
    expect(told(await truesweep(...words))).toEqual(all);
  });
});

describe('elsewhere those that concern what is advised, and where the rest stands', () => {
  test.each([
    ['terminals', ['terminals', 'A,B=5k/5k', 'A,C=1k/5k', 'B,C=5k/1k'], ['unplugged', 'limiter']],
    ['expect', ['expect', ...job], ['unplugged', 'limiter']],
    [
      'readings of a bath',
      ['readings', '--job', 'examples/coolant-sensor.job.json'],
      ['battery-and-fuel', 'static', 'unplugged', 'hot-bath'],
    ],
    [
      'readings of a coil',
      ['readings', '--job', 'examples/crank-sensor.job.json'],
      ['battery-and-fuel', 'static', 'unplugged', 'coil-kick', 'low-ohm-coil'],
    ],
    ['instruments', ['instruments', ...job], ['unplugged', 'fingers']],
    [
      'set-closed',
      'set-closed --reading 0.6V --wanted 0.5V --turned 2 --then 0.7V'.split(' '),
      ['fingers', 'snaps-shut'],
    ],
    ['compare', ['compare', ...job, worn, sound], ['electronic-throttle', 'snaps-shut']],
    ['reopen', ['reopen', report], ['electronic-throttle', 'snaps-shut']],
    [
      'a sound sensor, of which more is to be recorded',
      ['score', ...job, sound],
      ['unplugged', 'fingers', 'electronic-throttle', 'snaps-shut'],
    ],
  ])('%s', async (_, words, wanted) => {
    const out = await truesweep(...words);
    expect(told(out)).toEqual(wanted);
    expect(out).toMatch(/service manual.*“truesweep --help” prints all the cautions\. ?$/);
  });
});

describe('where a fault was found', () => {
  let out: string;
  beforeAll(async () => {
    out = await truesweep('score', '--short', ...job, worn);
  });

  test('all that concern what is advised: hands, leads, and what refits', () => {
    expect(out).toContain('replace the sensor');
    expect(told(out)).toEqual(
      expect.arrayContaining([
        'battery-and-fuel',
        'static',
        'fingers',
        'snaps-shut',
        'electronic-throttle',
      ]),
    );
  });

  test('also where only a better recording is advised: it is made by hand', async () => {
    const slow = await truesweep('score', ...job, 'examples/recordings/too-slow.csv');
    expect(told(slow)).toEqual(expect.arrayContaining(['unplugged', 'fingers']));
  });
});
