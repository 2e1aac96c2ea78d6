import {
  appendFileSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setImmediate as turn } from 'node:timers/promises';
import { loadJob } from '@truesweep/jobs/node';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { BatchInput } from '../../packages/cli/src/batch/batchInput.js';
import { type Journal, openJournal } from '../../packages/cli/src/batch/journal.js';
import type { JudgePool } from '../../packages/cli/src/batch/judgePool.js';
import { judgeTaskHere } from '../../packages/cli/src/batch/judgeTaskHere.js';
import { runBatch } from '../../packages/cli/src/batch/runBatch.js';
import { resultFiles, writeResults } from '../../packages/cli/src/batch/writeResults.js';
import { soak } from '../counts.js';
import { recordingText } from './invented.js';

const job = 'examples/outboard-sensor.job.json';
let folder = '';
let inputs: readonly BatchInput[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'truesweep-same-'));
  const text = (seed: number, isWorn = false) =>
    recordingText({ seed, interval: 0.02, strokes: 2, isWorn });
  const contents: Readonly<Record<string, string | Uint8Array>> = {
    'a.csv': text(1),
    'b.csv': text(2, true),
    'b again.csv': text(2, true),
    'c.csv': text(3),
    'd.csv': text(4, true),
    'e.csv': '',
    'f.csv': 'no numbers\n',
    'g.csv': Uint8Array.from({ length: 300 }, (_, i) => i % 256),
    'h.csv': text(5).slice(0, 400),
    'wrong.job.json': '{}',
  };
  for (const [name, content] of Object.entries(contents))
    writeFileSync(join(folder, name), content);
  symlinkSync('nowhere.csv', join(folder, 'link.csv'));
  const named = Object.keys(contents).filter((name) => name.endsWith('.csv'));
  inputs = [
    ...named.map((name, i) => ({
      file: join(folder, name),
      ...(i % 2 === 0 && { sensor: `Engine ${i}`, date: '2026-04-02' }),
      ...(i % 3 === 0 && { note: '=1+1, "quoted"' }),
    })),
    { file: join(folder, 'link.csv') },
    { file: join(folder, 'missing.csv') },
    { file: folder },
    { file: join(folder, 'a copy of no job.csv'), job: join(folder, 'wrong.job.json') },
  ];
  await loadJob(job);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Judges in this thread, so many at once, each after some turns of the event loop. */
function poolHere(workers: number, delays: () => number, onJudged: () => void): JudgePool {
  let busy = 0;
  return {
    async judge(task, isKept) {
      while (busy >= workers) await turn();
      busy += 1;
      try {
        for (let i = delays(); i > 0; i--) await turn();
        let key = '';
        const result = await judgeTaskHere(task, (one) => {
          key = one;
          return isKept(one);
        });
        if (result) onJudged();
        return result ? { kind: 'result', result } : { kind: 'known', key };
      } finally {
        busy -= 1;
      }
    },
    end: async () => {},
  };
}

/** Judges until so many are done; all where left out. */
async function judged(
  given: readonly BatchInput[],
  journal: Journal,
  { workers = 1, delays = (): number => 0, until = Number.POSITIVE_INFINITY } = {},
): Promise<{ readonly judged: number }> {
  const stop = new AbortController();
  let [done, fresh] = [0, 0];
  await runBatch({
    inputs: (async function* () {
      yield* given;
    })(),
    job,
    journal,
    pool: poolHere(workers, delays, () => {
      fresh += 1;
    }),
    atOnce: 2 * workers,
    largest: 2 ** 20,
    onDone: () => {
      done += 1;
      if (done >= until) stop.abort();
    },
    signal: stop.signal,
  });
  return { judged: fresh };
}

const written = (out: string) => resultFiles.map((name) => readFileSync(join(out, name), 'utf8'));

/** The first line that differs, short enough to be read. */
function firstOther(texts: readonly string[], wanted: readonly string[]): unknown {
  return texts
    .flatMap((text, i) => {
      const lines = text.split('\n');
      const others = wanted[i]!.split('\n');
      return Array.from({ length: Math.max(lines.length, others.length) }, (_, line) => [
        lines[line]?.slice(0, 200),
        others[line]?.slice(0, 200),
        lines[line] === others[line],
      ]);
    })
    .find(([, , isSame]) => !isSame);
}

async function reference(): Promise<readonly string[]> {
  const out = mkdtempSync(join(folder, 'out-'));
  const journal = openJournal(join(out, 'journal.jsonl'));
  await judged(inputs, journal);
  await writeResults(out, journal);
  journal.close();
  return written(out);
}

test('any order, any number of workers, any interruption: the same files, byte for byte', async () => {
  const wanted = await reference();
  const [lines] = wanted;
  expect(lines!.trimEnd().split('\n')).toHaveLength(inputs.length);
  expect(lines).not.toContain('judgedAt');
  await fc.assert(
    fc.asyncProperty(
      fc.shuffledSubarray([...inputs.keys()], { minLength: inputs.length }),
      fc.integer({ min: 1, max: 4 }),
      fc.array(fc.nat(5), { minLength: 1 }),
      fc.array(
        fc.record({
          until: fc.integer({ min: 1, max: inputs.length }),
          torn: fc.nat(200),
          rubbish: fc.constantFrom('', '{"file":"', 'x', '{"key":"1"}\nnot a result\n{"fi'),
        }),
        { maxLength: 3 },
      ),
      async (order, workers, waits, interruptions) => {
        const out = mkdtempSync(join(folder, 'out-'));
        const path = join(out, 'journal.jsonl');
        let at = 0;
        const how = { workers, delays: () => waits[at++ % waits.length]! };
        const given = order.map((i) => inputs[i]!);
        for (const { until, torn, rubbish } of interruptions) {
          const journal = openJournal(path);
          await judged(given, journal, { ...how, until });
          journal.close();
          const { length } = readFileSync(path);
          truncateSync(path, Math.max(0, length - torn));
          appendFileSync(path, rubbish);
        }
        const journal = openJournal(path);
        await judged(given, journal, how);
        await writeResults(out, journal);
        journal.close();
        expect(firstOther(written(out), wanted)).toBeUndefined();
        rmSync(out, { recursive: true });
      },
    ),
    { numRuns: 40 * soak },
  );
});

test('nothing is judged twice: not again, not moved, not filed otherwise; other limits and changed bytes are', async () => {
  const out = mkdtempSync(join(folder, 'out-'));
  const path = join(out, 'journal.jsonl');
  const good = inputs.filter(({ file }) => /[\\/][a-d]\.csv$/.test(file));
  const again = async (given: readonly BatchInput[]) => {
    const journal = openJournal(path);
    const { judged: fresh } = await judged(given, journal);
    const results = [...journal.inOrder()];
    journal.close();
    return { fresh, results };
  };
  expect((await again(good)).fresh).toBe(good.length);
  const length = () => readFileSync(path).length;
  const before = length();
  expect((await again(good)).fresh).toBe(0);
  expect(length()).toBe(before);

  const [one] = good;
  const moved = join(folder, 'moved.csv');
  writeFileSync(moved, readFileSync(one!.file));
  const filed = await again([{ file: moved, sensor: 'Starboard engine', note: 'moved' }]);
  expect(filed.fresh).toBe(0);
  expect(filed.results).toMatchObject([{ file: moved, sensor: 'Starboard engine', note: 'moved' }]);

  appendFileSync(moved, '9,0.43\n');
  expect((await again([{ file: moved }])).fresh).toBe(1);

  const strict = join(folder, 'strict.job.json');
  const told = JSON.parse(readFileSync(job, 'utf8'));
  writeFileSync(strict, JSON.stringify({ ...told, criteria: { dropout: '20 ms' } }));
  expect((await again([{ file: one!.file, job: strict }])).fresh).toBe(1);
  writeFileSync(strict, JSON.stringify({ ...told, title: 'Another title', notes: 'and notes' }));
  const renamed = await again([{ file: one!.file, job: strict }]);
  expect(renamed.fresh).toBe(0);
  expect(renamed.results[0]!.job).toBe('Another title');
});
