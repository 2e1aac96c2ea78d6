import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readDelimited } from '@truesweep/recordings';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { fastest } from './fastest.js';
import { keeps } from './keeps.js';

const megabytes = 200;
const heading = 'time (s),wiper (V)\n';

/** A two-column file: times to a tenth of a millisecond, volts to the millivolt. */
function twoColumns(bytes: number): Uint8Array {
  const file = new Uint8Array(bytes);
  const encoder = new TextEncoder();
  let at = encoder.encodeInto(heading, file).written;
  for (let row = 0; at < bytes - 40; ) {
    let text = '';
    for (let k = 0; k < 1000; k++, row++) {
      text += `${(row / 10_000).toFixed(4)},${(2 + 1.9 * Math.sin(row / 5000)).toFixed(3)}\n`;
    }
    const { written } = encoder.encodeInto(text, file.subarray(at));
    at += written;
    if (written < text.length) break;
  }
  return file.subarray(0, file.lastIndexOf(0x0a, at - 1) + 1);
}

/** The bound: a loop that knows the format beforehand, checks nothing and finds nothing out. */
function fixedFormat(file: Uint8Array): readonly [Float64Array, Float64Array] {
  const most = Math.ceil(file.length / 8);
  const [time, signal] = [new Float64Array(most), new Float64Array(most)];
  let count = 0;
  for (let at = heading.length; at < file.length; at++) {
    let mantissa = 0;
    for (; file[at] !== 0x2c; at++)
      if (file[at] !== 0x2e) mantissa = mantissa * 10 + file[at]! - 48;
    time[count] = mantissa / 1e4;
    mantissa = 0;
    for (at++; file[at] !== 0x0a; at++)
      if (file[at] !== 0x2e) mantissa = mantissa * 10 + file[at]! - 48;
    signal[count++] = mantissa / 1e3;
  }
  return [time.subarray(0, count), signal.subarray(0, count)];
}

test('a two-column file of 200 MB', () => {
  const file = twoColumns(megabytes * 1e6);
  const bound = fastest(() => void fixedFormat(file), 3);
  const own = fastest(() => void readDelimited(file), 3);
  console.log(`reading ${megabytes} MB: ${(megabytes / own).toFixed(0)} MB/s`);
  keeps('of the speed of the bound', bound / own, { side: 'least', goal: 0.7, holds: 0.4 });
  const part = twoColumns(20e6);
  const text = new TextDecoder().decode(part);
  const papa = fastest(() => void Papa.parse(text, { dynamicTyping: true }), 3);
  const partly = fastest(() => void readDelimited(part), 3);
  keeps('times as fast as papaparse', papa / partly, { side: 'least', goal: 10, holds: 10 });
  const { sweep } = readDelimited(part);
  const [time, signal] = fixedFormat(part);
  expect(sweep).toEqual({ time: time.slice(), signal: signal.slice() });
}, 300_000);

test.each([
  ['100 KB', 1e5, 200],
  ['100 MB', 1e8, 3],
] as const)(
  'finding out how %s are written',
  (name, bytes, rounds) => {
    const file = twoColumns(bytes);
    const told = {
      delimiter: ',',
      decimal: '.',
      timeColumn: 0,
      signalColumn: 1,
      timeUnit: 's',
      signalUnit: 'V',
    } as const;
    const guessed = fastest(() => void readDelimited(file), rounds);
    const known = fastest(() => void readDelimited(file, told), rounds);
    keeps(`times as long as when it is told, of ${name}`, guessed / known, {
      side: 'most',
      goal: 1.5,
      holds: 1.5,
    });
  },
  300_000,
);

/** Reads a file in pieces, in a process of its own, and prints by how much its memory grew at most, MB. */
const streaming = `
import { createReadStream } from 'node:fs';
import { samplesOf } from '@truesweep/recordings';
const before = process.memoryUsage.rss();
let [most, count] = [before, 0];
for await (const { time } of samplesOf(createReadStream(process.argv[1]))) {
  count += time.length;
  most = Math.max(most, process.memoryUsage.rss());
}
console.log(JSON.stringify({ count, grown: (most - before) / 1e6 }));
`;

test('a file of 200 MB in pieces', () => {
  const folder = mkdtempSync(join(tmpdir(), 'truesweep-bench-'));
  const file = join(folder, 'long.csv');
  const bytes = twoColumns(megabytes * 1e6);
  writeFileSync(file, bytes);
  const args = ['--input-type=module', '--eval', streaming, file];
  const { stdout } = spawnSync(process.execPath, args, { cwd: here, encoding: 'utf8' });
  rmSync(folder, { recursive: true });
  const { count, grown } = JSON.parse(stdout) as { count: number; grown: number };
  keeps(`streaming ${megabytes} MB: extra memory, MB`, grown, {
    side: 'most',
    goal: 150,
    holds: 150,
  });
  expect(count).toBe(fixedFormat(bytes)[0].length);
}, 120_000);

const here = fileURLToPath(new URL('.', import.meta.url));
const program = fileURLToPath(new URL('../../packages/cli/dist/truesweep.js', import.meta.url));
const job = fileURLToPath(new URL('../../examples/outboard-sensor.job.json', import.meta.url));

/** The median time of nine runs of a program, s. */
function medianTime(args: readonly string[]): number {
  const times = Array.from({ length: 9 }, () => {
    const begun = performance.now();
    const { status } = spawnSync(process.execPath, args);
    expect(status).toBe(0);
    return performance.now() - begun;
  });
  return times.sort((a, b) => a - b)[4]! / 1000;
}

test('starting the command line', () => {
  const folder = mkdtempSync(join(tmpdir(), 'truesweep-bench-'));
  const file = join(folder, 'long.csv');
  const rows = twoColumns(1_300_000);
  const hundredThousand = new TextDecoder().decode(rows).split('\n').slice(0, 100_001);
  writeFileSync(file, `${hundredThousand.join('\n')}\n`);
  const nothing = medianTime(['-e', '0']);
  const help = medianTime([program, '--help']);
  const score = medianTime([program, 'score', file, '--job', job]);
  rmSync(folder, { recursive: true });
  keeps('truesweep --help over node -e 0', help / nothing, { side: 'most', goal: 2.5, holds: 2.5 });
  keeps('truesweep score of 100,000 samples over node -e 0', score / nothing, {
    side: 'most',
    goal: 6,
    holds: 15,
  });
}, 120_000);
