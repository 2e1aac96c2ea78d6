import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import {
  closeSync,
  constants,
  existsSync,
  mkdtempSync,
  openSync,
  readFileSync,
  readSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { scoreSweep } from '@truesweep/core';
import { jobCriteria, jobExpectation, readJobRecording, writeJob } from '@truesweep/jobs';
import { loadJob } from '@truesweep/jobs/node';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { chooseSource } from '../../packages/cli/src/live/chooseSource.js';
import type { LiveState } from '../../packages/cli/src/live/liveState.js';
import { watchLive } from '../../packages/cli/src/live/watchLive.js';
import { emulate, whyNoEmulation } from '../controller/emulator.js';
import { soak } from '../counts.js';
import { type PseudoTerminal, pseudoTerminal, whyNoTerminal } from './pseudoTerminal.js';
import { expectSent, savedRows } from './savedRows.js';
import { bytesOf, heading, job, lineOf, rowOptions, type SentRow, sentRows } from './sentRows.js';

const command = join(import.meta.dirname, '../../packages/cli/dist/truesweep.js');
const noTerminal = whyNoTerminal();
const noEmulation = whyNoEmulation();
let folder = '';
const inFolder = (name: string) => join(folder, name);

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'truesweep-live-'));
  writeFileSync(inFolder('bench.job.json'), writeJob(job));
});
/** Commands that a test began: none outlives it. */
const begun: ChildProcess[] = [];
afterAll(() => {
  for (const child of begun) child.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

/** What becomes of rows on their way, or of what sends them. */
interface Trouble {
  readonly seed: number;
  readonly wornAt: number | undefined;
  /** Whether each line carries a check: without, a line that lost a digit is one with another number. */
  readonly isChecked: boolean;
  /** The first stamp, µs: some wrap while they run. */
  readonly first: number;
  readonly kind: 'none' | 'lost' | 'flipped' | 'restart' | 'garbage' | 'unplugged';
  /** Where it happens, parts of the whole. */
  readonly at: readonly number[];
}

const trouble = fc.record({
  seed: fc.integer({ min: 1, max: 1e6 }),
  wornAt: fc.option(fc.double({ min: 0.2, max: 0.8, noNaN: true }), { nil: undefined }),
  isChecked: fc.boolean(),
  first: fc.constantFrom(0, 12_345_678, 2 ** 32 - 2_000_000),
  kind: fc.constantFrom('none', 'lost', 'flipped', 'restart', 'garbage', 'unplugged'),
  at: fc.array(fc.double({ min: 0.05, max: 0.95, noNaN: true }), { minLength: 1, maxLength: 3 }),
}) satisfies fc.Arbitrary<Trouble>;

const garbage = Uint8Array.from({ length: 300 }, (_, i) => (i * 7919) % 256);

/** What is sent: pieces of bytes, or that the plug is pulled and put in again. */
function sentPieces(rows: readonly SentRow[], given: Trouble): readonly (Uint8Array | 'unplug')[] {
  const { isChecked, first, kind } = given;
  const at = given.at.map((part) => Math.floor(part * rows.length)).toSorted((a, b) => a - b);
  const restart = kind === 'restart' ? at[0]! : rows.length;
  const lines = rows.map((row, number) =>
    number < restart
      ? lineOf(row, number, first)
      : lineOf({ ...row, stamp: row.stamp - rows[restart]!.stamp }, number, 500),
  );
  const withHeading = [
    heading,
    ...lines.slice(0, 2000),
    ...(isChecked ? [heading] : []),
    ...lines.slice(2000),
  ];
  const all = bytesOf(withHeading, isChecked);
  const places = at.map((place) => Math.floor((place / rows.length) * all.length));
  switch (kind) {
    case 'lost':
    case 'flipped': {
      const bytes = Array.from(all);
      for (const place of places.toReversed()) {
        if (kind === 'lost') bytes.splice(place, 1 + (place % 90));
        else bytes[place]! ^= 1 + (place % 255);
      }
      return [Uint8Array.from(bytes)];
    }
    case 'restart': {
      // In the middle of a line.
      const end = bytesOf([heading, ...lines.slice(0, restart)], isChecked).length;
      const rest = bytesOf([heading, ...lines.slice(restart)], isChecked);
      return [all.subarray(0, end - 5), rest];
    }
    case 'garbage':
      return [...cut(all, places).flatMap((piece) => [piece, garbage]), bytesOf([''], false)];
    case 'unplugged':
      return cut(all, places).flatMap((piece, i) =>
        i === 0 ? [piece] : ['unplug' as const, piece],
      );
    default:
      return [all];
  }
}

function cut(bytes: Uint8Array, places: readonly number[]): readonly Uint8Array[] {
  return [0, ...places].map((from, i) => bytes.subarray(from, places[i] ?? bytes.length));
}

/** Plays a recording into a port and saves what comes of it. */
async function played(given: Trouble, name: string) {
  const rows = sentRows(given.seed, 1, given.wornAt);
  const path = inFolder(`${name}.port`);
  const [file, jobFile] = [inFolder(`${name}.csv`), inFolder(`${name}.job.json`)];
  let port = await pseudoTerminal(path);
  const text = rowOptions;
  const source = await chooseSource(path, 115_200, text);
  let [state, stop]: [LiveState | undefined, () => void] = [undefined, () => {}];
  const recording = watchLive(
    { job, source, text, isRateTold: true, file, jobFile },
    {
      show: (now) => {
        state = now;
      },
      control: (end) => {
        stop = end;
      },
    },
  );
  /** Waits until the last whole row of a piece is saved. */
  const savedOf = async (piece: Uint8Array): Promise<void> => {
    const [, number] =
      /(\d+)(?:\*[0-9A-F]{4})?\n[^\n]*$/.exec(new TextDecoder('latin1').decode(piece)) ?? [];
    await until(() => readFileSync(file, 'utf8').endsWith(`,${number}\n`));
  };
  try {
    await until(() => state !== undefined);
    for (const piece of sentPieces(rows, given)) {
      if (piece === 'unplug') {
        await port.unplug();
        await until(() => state?.isLost === true);
        port = await pseudoTerminal(path);
        await until(() => state?.isLost === false);
      } else
        for (let at = 0; at < piece.length; at += 4000)
          await port.write(piece.subarray(at, at + 4000));
      if (piece !== 'unplug' && piece.length > garbage.length) await savedOf(piece);
    }
  } finally {
    stop();
  }
  const recorded = await recording;
  await port.unplug();
  return { rows, file, jobFile, recorded, state: state! };
}

async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await wait(10);
}

/** Runs work side by side. */
async function sideBySide<Item>(
  items: readonly Item[],
  work: (item: Item, index: number) => Promise<void>,
) {
  const waiting = items.map((item, index) => [item, index] as const);
  const one = async (): Promise<void> => {
    for (let next = waiting.shift(); next; next = waiting.shift()) await work(...next);
  };
  await Promise.all(Array.from({ length: 4 }, one));
}

describe.skipIf(noTerminal)('a recorder at a serial port', () => {
  test(
    'whatever happens to its lines: no sample is made up, what is missing is told, and the file says what was watched',
    async () => {
      const cases = fc.sample(trouble, { seed: 20260401, numRuns: 200 * soak });
      const counted = { rows: 0, sent: 0, damaged: 0, gaps: 0 };
      await sideBySide(cases, async (given, index) => {
        const { rows, file, jobFile, recorded, state } = await played(given, `run-${index}`);
        const saved = savedRows(file);
        const what = JSON.stringify(given);
        const isSure = given.isChecked || !['lost', 'flipped'].includes(given.kind);
        if (isSure) expectSent(saved, rows);
        const { reading, samples } = recorded;
        expect(saved.length, what).toBe(samples);
        expect(reading.isChecked, what).toBe(given.isChecked);
        // At most one row is lost at each place, and what lay in the bytes that were taken.
        expect(samples, what).toBeGreaterThan(rows.length - 15);
        if (given.kind === 'none')
          expect([samples, reading.gapCount], what).toEqual([rows.length, 0]);
        if (samples < rows.length && isSure) expect(reading.gapCount, what).toBeGreaterThan(0);
        if (given.kind === 'restart')
          expect(
            reading.gaps.map(({ kind }) => kind),
            what,
          ).toContain('restarted');
        const kept = await loadJob(jobFile);
        const [recording] = kept.recordings!;
        const read = readJobRecording(readFileSync(file), recording!, kept);
        const score = scoreSweep(
          read.sweep,
          jobExpectation(kept),
          read.recorder,
          jobCriteria(kept),
        );
        expect(state.soFar?.score, what).toEqual(score);
        for (const path of [file, jobFile]) rmSync(path);
        counted.rows += samples;
        counted.sent += rows.length;
        counted.damaged += reading.damagedLines;
        counted.gaps += reading.gapCount;
      });
      console.log(
        `${cases.length} recordings: ${counted.rows} of ${counted.sent} rows saved, ${counted.damaged} lines damaged, ${counted.gaps} gaps`,
      );
    },
    180_000 * soak,
  );

  test('is found at its rate, at real speed, and its sweep goes on after the plug was pulled', async () => {
    const rows = sentRows(3, 1, 0.4);
    const path = inFolder('real.port');
    let port = await pseudoTerminal(path);
    const lines = ['--delimiter', ',', '--time-unit', 'us', '--signal-unit', 'counts'];
    const recorder = running([
      ...['live', path, '--job', inFolder('bench.job.json'), '--out', inFolder('real.csv')],
      ...['--volts-per-unit', '4.887585532746823 mV', '--short', ...lines],
    ]);
    // At another rate nothing of it is text; while it is sought the throttle rests.
    let rested = 0;
    while (!recorder.said().includes('at 57600 baud')) {
      const rest = Array.from({ length: 30 }, () => `${1000 * rested++},${rows[0]!.counts}`);
      await port.write(port.rate() === 57_600 ? bytesOf(rest, false) : garbage);
      await wait(30);
    }
    const sent = rows.map(({ stamp, counts }) => `${stamp + 1000 * rested},${counts}`);
    const half = Math.floor(sent.length / 2);
    await atRealSpeed(port, sent.slice(0, half));
    await wait(300);
    await port.unplug();
    await wait(500);
    port = await pseudoTerminal(path);
    await wait(600);
    await atRealSpeed(port, sent.slice(half));
    await wait(500);
    recorder.child.kill('SIGINT');
    const { code, out, err } = await recorder.ended;
    await port.unplug();
    expect(err).toMatch(/It is\s+gone at the moment/);
    expect(err).toContain('dropout at');
    expect(err).toMatch(/Saved: \d+ samples in .*real\.csv/);
    expect(out).toContain('FAIL');
    expect(code).toBe(0);
    const text = readFileSync(inFolder('real.csv'), 'utf8').trim().split('\n').length - 1;
    expect(text).toBeGreaterThan(rows.length - 30);
    expect(text).toBeLessThanOrEqual(rows.length + rested);
  }, 60_000);
});

/** Sends lines a thousand a second. */
async function atRealSpeed(port: PseudoTerminal, lines: readonly string[]): Promise<void> {
  const begun = performance.now();
  for (let at = 0; at < lines.length; ) {
    const due = Math.min(lines.length, Math.floor(performance.now() - begun) + 1);
    if (due > at) await port.write(bytesOf(lines.slice(at, due), false));
    at = Math.max(at, due);
    await wait(10);
  }
}

/** The command, running. */
function running(
  args: readonly string[],
  input?: Uint8Array,
): {
  child: ChildProcess;
  ended: Promise<{ code: number | null; out: string; err: string }>;
  said: () => string;
} {
  const child = spawn(process.execPath, [command, ...args], { stdio: ['pipe', 'pipe', 'pipe'] });
  begun.push(child);
  if (input) child.stdin!.end(input);
  let [out, err] = ['', ''];
  child.stdout!.setEncoding('utf8').on('data', (text) => {
    out += text;
  });
  child.stderr!.setEncoding('utf8').on('data', (text) => {
    err += text;
  });
  return {
    child,
    said: () => err,
    ended: new Promise((resolve) => child.once('close', (code) => resolve({ code, out, err }))),
  };
}

test(
  'killed at any moment, the file holds every line that was complete, and no half one',
  async () => {
    const moments = fc.sample(fc.integer({ min: 1, max: 1500 }), { seed: 7, numRuns: 20 * soak });
    const rows = sentRows(5, 2, 0.5);
    const lines = rows.map((row, number) => lineOf(row, number, 0));
    const missing: number[] = [];
    await sideBySide(moments, async (moment, index) => {
      const pipe = inFolder(`killed-${index}.pipe`);
      const file = inFolder(`killed-${index}.csv`);
      execFileSync('mkfifo', [pipe]);
      const ours = openSync(pipe, constants.O_RDWR | constants.O_NONBLOCK);
      const args = [
        'live',
        pipe,
        '--job',
        inFolder('bench.job.json'),
        '--out',
        file,
        '--volts-per-unit',
        '4.887585532746823 mV',
      ];
      const { child, ended } = running(args);
      writeSync(ours, bytesOf([heading], false));
      let sent = 0;
      const send = (count: number) => {
        sent += writeSync(ours, bytesOf(lines.slice(sent, sent + count), false)) > 0 ? count : 0;
      };
      while (!existsSync(file) || readFileSync(file).length === 0) {
        send(sent < 100 ? 20 : 0);
        await wait(10);
      }
      const from = sent;
      while (sent < from + moment) {
        send(20);
        await wait(2);
      }
      child.kill('SIGKILL');
      await ended;
      const left = Buffer.alloc(2 ** 20);
      let unread = 0;
      try {
        unread = readSync(ours, left);
      } catch {
        // Nothing is left.
      }
      closeSync(ours);
      const unreadRows = left.toString('latin1', 0, unread).split('\n').length - 1;
      const saved = readFileSync(file, 'utf8');
      expect(saved.endsWith('\n')).toBe(true);
      const savedLines = saved.trimEnd().split('\n').slice(1);
      expect(savedLines).toEqual(
        rows.slice(0, savedLines.length).map(({ stamp, counts }) => `${stamp / 1e6},${counts}`),
      );
      const lost = lines.slice(savedLines.length, sent - unreadRows);
      missing.push(bytesOf(lost, false).length);
      rmSync(file);
    });
    // What a killed program had just been given and not yet handed on: a piece in hand and one read ahead.
    expect(Math.max(...missing)).toBeLessThanOrEqual(2 * 4096);
    console.log(
      `killed ${moments.length} times: ${missing.filter((count) => count > 0).length} times bytes on their way were lost, ${Math.max(...missing)} at most`,
    );
  },
  120_000 * soak,
);

test.skipIf(noEmulation)(
  'a controller that is emulated, recorded, saved and judged',
  async () => {
    const rows = sentRows(9, 3);
    const bytes = await emulate({
      seconds: rows.length / 1000,
      signalVolts: (t) =>
        (5 * (rows[Math.min(rows.length - 1, Math.floor(1000 * t))]!.counts + 0.5)) / 1023,
      supplyVolts: 4.1,
      firstStamp: 2 ** 32 - 3_000_000,
    });
    const args = [
      'live',
      '-',
      '--job',
      inFolder('bench.job.json'),
      '--out',
      inFolder('controller.csv'),
      '--volts-per-unit',
      '4.8828125 mV',
      '--supply-column',
      'supply',
      '--exit-by-verdict',
    ];
    const { code, out, err } = await running(args, bytes).ended;
    expect(err).toMatch(/Saved: \d{4,} samples/);
    expect(err).not.toContain('gap');
    expect(out).toContain('PASS');
    expect(code).toBe(0);
    const { code: again, out: judged } = await running([
      'score',
      inFolder('controller.csv'),
      '--job',
      inFolder('controller.job.json'),
      '--exit-by-verdict',
    ]).ended;
    expect(again).toBe(0);
    expect(judged).toBe(out);
  },
  60_000,
);
