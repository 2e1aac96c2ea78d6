import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { afterAll, describe, expect, test } from 'vitest';
import { root } from './tarballs.js';

const program = join(root, 'packages/cli/dist/truesweep.js');
const job = join(root, 'examples/outboard-sensor.job.json');
const folder = mkdtempSync(join(tmpdir(), 'truesweep-bounded-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Starts the command line; tells what it said and how it left. */
function start(...args: string[]) {
  const child = spawn(process.execPath, [program, ...args]);
  const said = { out: '', err: '' };
  child.stdout.on('data', (text) => {
    said.out += text;
  });
  child.stderr.on('data', (text) => {
    said.err += text;
  });
  // Who is no longer read is told so; that is what is looked for here.
  child.stdin.on('error', () => {});
  const left = once(child, 'close').then(([code]) => code as number | null);
  return { child, said, left };
}

/** Gives a command the same bytes again and again, at most so many megabytes, for as long as it takes them. */
async function feedEndlessly(piece: string | Uint8Array, ...args: string[]) {
  const { child, said, left } = start(...args);
  const bytes = Buffer.from(piece);
  let given = 0;
  while (child.stdin.writable && given < 200e6) {
    given += bytes.length;
    if (child.stdin.write(bytes)) continue;
    await Promise.race([once(child.stdin, 'drain').catch(() => {}), left]);
  }
  child.stdin.end();
  return { code: await left, megabytes: given / 1e6, ...said };
}

const score = ['score', '--job', job];

describe('what has no end is refused at the first sign that it is no recording', () => {
  test.each([
    ['zeros', new Uint8Array(65_536), 'binary-file'],
    ['a line', '0.5,'.repeat(20_000), '[a-z-]+'],
    ['words', 'no numbers here\n'.repeat(5000), 'no-numbers'],
  ])('%s', async (_, piece, code) => {
    const fed = await feedEndlessly(piece, ...score, '-');
    expect(fed).toMatchObject({ code: 2, out: '' });
    expect(fed.err).toMatch(new RegExp(`^truesweep: standard input.*\\(${code}\\)\\n$`));
    expect(fed.megabytes).toBeLessThan(8);
  });

  test('the job too', async () => {
    const fed = await feedEndlessly('[0,\n'.repeat(20_000), 'plan', '--job', '-');
    expect(fed).toMatchObject({ code: 2, out: '' });
    expect(fed.err).toContain('(file-too-large)');
  });
});

describe('a recording is no larger than was said', () => {
  test('rows without end are refused, and the option is named', async () => {
    const fed = await feedEndlessly('1.0,1.0\n'.repeat(20_000), ...score, '-', '--largest', '2 MB');
    expect(fed).toMatchObject({ code: 2, out: '' });
    expect(fed.err).toMatch(/more than 2.MB.*--largest.*\(file-too-large\)/);
    expect(fed.megabytes).toBeLessThan(8);
  });

  test('a sound recording, which is read whole, too', async () => {
    const sound = `RIFF    WAVE${'junk'.repeat(20_000)}`;
    const fed = await feedEndlessly(sound, ...score, '-', '--largest', '2MB');
    expect(fed).toMatchObject({ code: 2, out: '' });
    expect(fed.err).toContain('(file-too-large)');
    expect(fed.megabytes).toBeLessThan(8);
  });

  test('a larger file is not begun: 1 GB is read where nothing is said', async () => {
    const file = join(folder, 'huge.csv');
    writeFileSync(file, '0,1\n');
    // A file with a hole takes no place on the disk.
    truncateSync(file, 2 ** 30 + 1);
    const { left, said } = start(...score, file);
    expect(await left).toBe(2);
    expect(said.err).toMatch(/huge\.csv.*more than 1.GB.*--largest.*\(file-too-large\)/);
  });

  test('what is no size is refused', async () => {
    const { left, said } = start(...score, 'a.csv', '--largest', 'much');
    expect(await left).toBe(2);
    expect(said.err).toMatch(/--largest.*such as 4 GB.*\(not-a-quantity\)/);
  });
});

describe('an input that does not come', () => {
  test.each([
    ['a recording', [...score, '-']],
    ['a job', ['expect', '--job', '-']],
  ])('%s is waited for, and that is told', async (what, args) => {
    const { child, said, left } = start(...args);
    await setTimeout(400);
    expect(said.err).toBe('');
    for (let tenths = 0; tenths < 80 && said.err === ''; tenths++) await setTimeout(100);
    expect(said.err).toBe(`truesweep: waiting for ${what} on the standard input …\n`);
    expect(child.exitCode).toBeNull();
    child.stdin.end('0,1\n');
    expect(await left).toBe(2);
  });

  test('nothing is told where it comes at once', async () => {
    const { child, said, left } = start(...score, '-');
    child.stdin.end('0,1\n');
    await left;
    expect(said.err).not.toContain('waiting');
  });
});
