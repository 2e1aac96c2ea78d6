import { execFileSync } from 'node:child_process';
import {
  appendFileSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { loadJob } from '@truesweep/jobs/node';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runTruesweep } from '../../../../tests/runTruesweep.js';

const jobFile = 'examples/outboard-sensor.job.json';
const worn = readFileSync('examples/recordings/worn.csv', 'utf8');
const lines = worn.trimEnd().split('\n');
let folder = '';
let count = 0;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'truesweep-record-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A new name in the folder of this test. */
const named = (end: string) => join(folder, `${count++}.${end}`);
const written = (text: string): string => {
  const file = named('txt');
  writeFileSync(file, text);
  return file;
};
const live = (args: readonly string[], more = {}) =>
  runTruesweep(['live', ...args, '--job', jobFile], more);

/** A screen on which somebody watches: what was drawn last, and a way to press keys. */
function watching() {
  const seen = { text: '', press: (_: string) => {}, isEnded: false };
  const screen = (onKey: (key: string) => void) => {
    seen.press = onKey;
    return {
      hasKeys: true,
      rows: () => 23,
      draw: (text: string) => {
        seen.text = text;
      },
      end: () => {
        seen.isEnded = true;
      },
    };
  };
  return { seen, screen };
}

const linesIn = (file: string): number =>
  existsSync(file) ? readFileSync(file, 'utf8').split('\n').length : 0;

async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await wait(5);
}

describe('truesweep live', () => {
  test('saves a file that another program writes, and judges it as score does', async () => {
    const [source, out] = [written(worn), named('csv')];
    const {
      code,
      out: told,
      err,
    } = await live([source, '--out', out, '--idle', '0.2s', '--exit-by-verdict']);
    expect(err).toContain(`Saved: ${lines.length - 1} samples`);
    const jobOf = out.replace('.csv', '.job.json');
    const judged = await runTruesweep(['score', out, '--job', jobOf, '--exit-by-verdict']);
    expect(told).toBe(judged.out);
    expect([code, judged.code]).toEqual([11, 11]);
    const { recordings, notes } = await loadJob(jobOf);
    expect(recordings).toHaveLength(1);
    expect(notes).toBe((await loadJob(jobFile)).notes);
  });

  test('says as it comes what is found and what is missing', async () => {
    const { err } = await live([written(worn), '--out', named('csv'), '--idle', '0.2s', '--short']);
    expect(err.match(/^dropout at/gm)!.length).toBeGreaterThan(2);
    expect(err).toMatch(/Still asked for: .*flex\s+the\s+harness/s);
    expect(err).not.toContain('press');
  });

  test('on a terminal it draws what fits, marks tests by keys and ends by one', async () => {
    const half = Math.floor(lines.length / 2);
    const source = written(`${lines.slice(0, half).join('\n')}\n`);
    const out = named('csv');
    const { seen, screen } = watching();
    const ended = live([source, '--out', out], { screen });
    await until(() => seen.text.includes('Still asked for'));
    const drawn = seen.text.trimEnd().split('\n');
    expect(drawn.length).toBeLessThanOrEqual(23);
    expect(Math.max(...drawn.map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(seen.text).toContain('press t');
    seen.press('t');
    appendFileSync(source, `${lines.slice(half, half + 800).join('\n')}\n`);
    await until(() => seen.text.includes('Marked: flexing'));
    await until(() => linesIn(out) >= half + 799);
    seen.press('t');
    await until(() => !/Marked: flexing|flex the harness/.test(seen.text));
    seen.press('q');
    const { code } = await ended;
    expect([code, seen.isEnded]).toEqual([0, true]);
    const [recording] = (await loadJob(out.replace('.csv', '.job.json'))).recordings!;
    expect(recording!.stretches).toEqual([
      { kind: 'harness-flexed', start: expect.any(Number), end: expect.any(Number) },
    ]);
  });

  test('ends after so much was recorded, or where it is told to', async () => {
    const out = named('csv');
    await live([written(worn), '--out', out, '--for', '2s', '--short']);
    expect(readFileSync(out, 'utf8').split('\n').length).toBeLessThan(lines.length / 2);
    const other = named('csv');
    let end = () => {};
    const onInterrupt = (listener: () => void) => {
      end = listener;
      return () => {};
    };
    const ended = live([written(worn), '--out', other, '--json'], { onInterrupt });
    await until(
      () => existsSync(other) && readFileSync(other, 'utf8').split('\n').length > lines.length,
    );
    end();
    const { out: data } = await ended;
    expect(JSON.parse(data)).toMatchObject([{ file: other, score: { verdict: 'fail' } }]);
  });

  test('a job that is there is kept, and nothing is recorded over it', async () => {
    const out = named('csv');
    const jobThere = out.replace('.csv', '.job.json');
    writeFileSync(jobThere, 'mine');
    const { code, err } = await live([written(worn), '--out', out, '--idle', '0.2s']);
    expect([code, readFileSync(jobThere, 'utf8'), existsSync(out)]).toEqual([2, 'mine', false]);
    expect(err).toContain('already; choose another name');
  });

  test('a named pipe that nobody writes to is left when it is told to', async () => {
    const pipe = named('pipe');
    execFileSync('mkfifo', [pipe]);
    const { code, err } = await live([pipe, '--out', named('csv'), '--idle', '0.2s']);
    expect([code, err]).toEqual([2, expect.stringContaining('Nothing came')]);
  });

  test('another file of the name is read from its beginning', async () => {
    const source = written(`${lines.slice(0, 3000).join('\n')}\n`);
    const out = named('csv');
    const { seen, screen } = watching();
    const ended = live([source, '--out', out], { screen });
    await until(() => linesIn(out) > 2999);
    renameSync(written(`${lines.slice(1, 1001).join('\n')}\n`), source);
    await until(() => linesIn(out) > 3999);
    seen.press('q');
    expect((await ended).err).toMatch(/1\s+gap/);
    expect(linesIn(out)).toBe(3000 + 1000 + 1);
  });

  test('what nobody told is told: the unit of lines without headings', async () => {
    const out = named('csv');
    const rows = written(
      lines
        .slice(1)
        .map((line) => line.replace(',', ';'))
        .join('\n'),
    );
    const { err } = await live([rows, '--out', out, '--idle', '0.2s', '--short']);
    expect(err.replaceAll(/\s+/g, ' ')).toContain(
      'the time was taken for s, the signal was taken for V',
    );
    const { notes } = await loadJob(out.replace('.csv', '.job.json'));
    expect(notes).toContain('the signal was taken for V');
  });

  test('a file that is begun anew is a gap, and the job says so', async () => {
    const source = written(`${lines.slice(0, 3000).join('\n')}\n`);
    const out = named('csv');
    const { seen, screen } = watching();
    const ended = live([source, '--out', out], { screen });
    await until(() => linesIn(out) > 2999);
    writeFileSync(source, `${lines.slice(0, 1000).join('\n')}\n`);
    await until(() => linesIn(out) > 3998);
    seen.press('stop');
    const { err } = await ended;
    expect(err).toMatch(/1\s+gap: .*began\s+anew/s);
    expect((await loadJob(out.replace('.csv', '.job.json'))).notes).toMatch(/1 gap.*began anew/);
  });

  test.each<[string, () => readonly string[], RegExp]>([
    ['a file of that name', () => ['-', '--out', written('mine')], /already; choose another name/],
    [
      'a folder that is not there',
      () => ['-', '--out', join(folder, 'no', 'a.csv')],
      /folder does not exist/,
    ],
    [
      'a source that is not there',
      () => [join(folder, 'none.txt'), '--out', named('csv')],
      /could not read the file/,
    ],
    [
      'a port that is not there',
      () => ['/dev/ttyNone0', '--out', named('csv')],
      /port does not open/,
    ],
    ['no rate', () => ['/dev/ttyNone0', '--baud', 'fast'], /--baud is "fast".*such as 115200/],
    [
      'no column',
      () => [written(worn), '--supply-column', 'supply', '--out', named('csv')],
      /No column is "supply"/,
    ],
    [
      'nothing that can be read',
      () => [written('hello\nworld\n'.repeat(20)), '--idle', '0.2s', '--out', named('csv')],
      /No line could be read/,
    ],
    [
      'nothing at all',
      () => [written(''), '--idle', '0.2s', '--out', named('csv')],
      /Nothing came/,
    ],
  ])('refuses %s, and leaves nothing behind', async (_, args, sentence) => {
    const given = args();
    const out = given[given.indexOf('--out') + 1]!;
    const before = existsSync(out) ? readFileSync(out, 'utf8') : undefined;
    const { code, out: told, err } = await live(given);
    expect(err.replaceAll(/\s+/g, ' ')).toMatch(sentence);
    expect([code, told]).toEqual([2, '']);
    if (given.includes('--out'))
      expect(existsSync(out) ? readFileSync(out, 'utf8') : undefined).toBe(before);
  });
});
