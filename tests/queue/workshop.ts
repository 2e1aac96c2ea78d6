import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { judgeOne, loadJob, type RecordingResult } from '@truesweep/jobs/node';
import { recordingText, variedText } from '../batch/invented.js';
import { askRedis } from './askRedis.js';
import { type QueueRun, type RunSettings, runQueue, startQueue } from './queueCommand.js';
import type { RedisServer } from './redisServer.js';

const job = join(import.meta.dirname, '../../examples/outboard-sensor.job.json');

/** A folder of recordings, a folder of results, and the commands between them. */
export interface Workshop {
  readonly folder: string;
  /** The options by which commands find the queue, which is the workshop's own. */
  readonly at: readonly string[];
  readonly queue: string;
  readonly recordings: string;
  readonly results: string;
  readonly job: string;
  /** Writes so many recordings, each with bytes of its own; their names. */
  readonly record: (count: number, prefix?: string) => readonly string[];
  /** Runs a command to its end. */
  readonly run: (
    args: readonly string[],
    settings?: RunSettings,
  ) => Promise<{ code: number | string | null; out: string; err: string }>;
  /** Puts all recordings, or those named. */
  readonly put: (
    more?: readonly string[],
    names?: readonly string[],
  ) => Promise<{ code: number | string | null; out: string; err: string }>;
  /** Starts a worker that takes over within a second or two. */
  readonly work: (more?: readonly string[], settings?: RunSettings) => QueueRun;
  /** What is parked. */
  readonly parked: () => Promise<
    readonly { id: string; file: string; reason: string; attempts: number }[]
  >;
  /** Waits until nothing waits and nothing is judged. */
  readonly settled: () => Promise<void>;
  /** Waits until so many results are filed. */
  readonly filed: (count: number) => Promise<void>;
  /** What the results say, by the names of the files, each parsed; fails for one that is not whole. */
  readonly filedResults: () => readonly RecordingResult[];
  /** The names of the recordings that have one, sorted. */
  readonly filedFiles: () => readonly string[];
  readonly remove: () => void;
}

let shops = 0;
let texts: readonly string[] | undefined;

/** Opens a workshop at a Redis. */
export function workshop(redis: Pick<RedisServer, 'address' | 'port'>): Workshop {
  texts ??= [1, 2, 3, 4].map((seed) =>
    recordingText({ seed, interval: 0.01, strokes: 2, isWorn: seed % 2 === 0 }),
  );
  const known = texts;
  const folder = mkdtempSync(join(tmpdir(), 'truesweep-queue-'));
  const [recordings, results] = [join(folder, 'recordings'), join(folder, 'results')];
  for (const path of [recordings, results]) mkdirSync(path);
  shops += 1;
  const queue = `shop-${shops}`;
  const at = ['--redis', redis.address, '--queue', queue];
  const run: Workshop['run'] = ([command = '', ...args], settings) =>
    runQueue([command, ...at, ...args], settings);
  const filedResults = () =>
    ['results', 'refused'].flatMap((kind) => resultsBelow(join(results, kind)));
  return {
    folder,
    at,
    queue,
    recordings,
    results,
    job,
    record: (count, prefix = '') =>
      Array.from({ length: count }, (_, i) => {
        const name = `${prefix}${i}.csv`;
        // Bytes of its own among all that the file of tests makes.
        const number = i + 1000 * prefix.length;
        writeFileSync(join(recordings, name), variedText(known[i % known.length]!, number));
        return name;
      }),
    run,
    put: (more = [], names = ['']) =>
      run([
        ...['put', '--folder', recordings, '--job', job, ...more],
        ...names.map((name) => join(recordings, name)),
      ]),
    work: (more = [], settings) =>
      startQueue(
        [
          ...['work', ...at, '--recordings', recordings, '--results', results],
          ...['--takeover', '1 s', '--takeovers', '100', '--listen', 'none', ...more],
        ],
        settings,
      ),
    async parked() {
      const { out } = await run(['parked', '--json']);
      return out
        .split('\n')
        .filter((line) => line !== '')
        .map((line) => JSON.parse(line));
    },
    async settled() {
      const late = lateness('it was settled');
      for (let left = 1; left > 0; late()) {
        await pause(20);
        // Where Redis is gone meanwhile, it is asked again.
        left = await inQueue(redis.port, queue).catch(() => 1);
      }
    },
    async filed(count) {
      for (const late = lateness(`${count} were filed`); filedNames(results).length < count; late())
        await pause(5);
    },
    filedResults,
    filedFiles: () =>
      filedResults()
        .map(({ file }) => file)
        .toSorted(),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** How many messages wait, are judged, or wait for another try. */
async function inQueue(port: number, queue: string): Promise<number> {
  const asked = await askRedis(port);
  try {
    const lists = ['LLEN wait', 'LLEN active', 'ZCARD delayed'];
    let sum = 0;
    for (const list of lists) {
      const [command = '', name] = list.split(' ');
      sum += Number(await asked.ask(command, `truesweep:${queue}:${name}`));
    }
    return sum;
  } finally {
    asked.end();
  }
}

/** The names of what is filed, below a folder of results. */
export function filedNames(results: string): readonly string[] {
  return ['results', 'refused'].flatMap((kind) => namesBelow(join(results, kind)));
}

function namesBelow(folder: string): readonly string[] {
  try {
    return readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.includes('.'),
    );
  } catch {
    return [];
  }
}

function resultsBelow(folder: string): readonly RecordingResult[] {
  return namesBelow(folder).map((name) => {
    const text = readFileSync(join(folder, name), 'utf8');
    const result = JSON.parse(text) as RecordingResult;
    if (result.key !== undefined && !name.endsWith(`${result.key}.json`))
      throw new Error(`${name} holds the result of the key ${result.key}.`);
    return result;
  });
}

/** What judging says of a recording by itself, but for when. */
export async function judgedAlone(shop: Workshop, name: string): Promise<object> {
  const result = await judgeOne(join(shop.recordings, name), await loadJob(shop.job), {
    file: name,
  });
  return withoutTime(result);
}

/** A result but for when it was judged. */
export function withoutTime({ judgedAt: _, ...result }: RecordingResult): object {
  return result;
}

/** What fails a wait that lasts too long, so that a test ends with what it waited for. */
function lateness(before: string): () => void {
  const begun = performance.now();
  return () => {
    if (performance.now() - begun > 30_000)
      throw new Error(`Half a minute passed before ${before}.`);
  };
}

export function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, milliseconds);
  });
}

/** Waits until a run has said something. */
export async function hasSaid(run: QueueRun, words: string | RegExp): Promise<void> {
  const isSaid = () =>
    typeof words === 'string' ? run.said.err.includes(words) : words.test(run.said.err);
  for (const late = lateness(`it said ${words}; it said ${run.said.err}`); !isSaid(); late()) {
    if (run.child.exitCode !== null || run.child.signalCode !== null) {
      // What it said last may still be on its way.
      await run.ended;
      if (isSaid()) return;
      throw new Error(`It ended without saying ${words}:\n${run.said.err}`);
    }
    await pause(5);
  }
}
