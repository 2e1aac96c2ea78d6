import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { judgeOne, loadJob } from '@truesweep/jobs/node';
import { folderStorage, openQueue, type RecordingQueue } from '@truesweep/queue';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { manyRecordings, recordingText } from '../batch/invented.js';
import { endAll, runQueue, startQueue } from '../queue/queueCommand.js';
import { redisProgram } from '../queue/redisProgram.js';
import { type RedisServer, redisServer } from '../queue/redisServer.js';
import { filedNames, pause } from '../queue/workshop.js';
import { keeps } from './keeps.js';

const jobPath = join(import.meta.dirname, '../../examples/outboard-sensor.job.json');
const isThere = !('why' in redisProgram());
/** Recordings of some 3 KB. */
const tiny = 2000;

let folder = '';
let redis: RedisServer;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'truesweep-bench-queue-'));
});
afterEach(async () => {
  endAll();
  await redis?.remove();
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Puts messages of these numbers, as of recordings in a shared folder. */
async function put(queue: RecordingQueue, from: number, to: number): Promise<void> {
  const job = await loadJob(jobPath);
  const running = new Set<Promise<unknown>>();
  for (let i = from; i < to; i++) {
    while (running.size >= 32) await Promise.race(running);
    const name = `2026/port-engine/${String(i).padStart(8, '0')}.csv`;
    const sha256 = i.toString(16).padStart(64, '0');
    const work = queue
      .put({ recording: { in: 'folder', name, bytes: 6000, sha256 }, file: name }, job)
      .finally(() => running.delete(work));
    running.add(work);
  }
  await Promise.all(running);
}

test.skipIf(!isThere)(
  'memory of Redis for each recording that waits',
  async () => {
    redis = await redisServer({ more: ['--appendfsync', 'everysec'] });
    const queue = await openQueue({ redis: { port: redis.port } });
    const held: number[] = [];
    const begun = performance.now();
    for (const [from, to] of [
      [0, 10_000],
      [10_000, 20_000],
    ] as const) {
      await put(queue, from, to);
      await pause(1000);
      held.push((await queue.status()).memoryBytes);
    }
    const seconds = (performance.now() - begun) / 1000 - 2;
    await queue.close();
    const each = (held[1]! - held[0]!) / 10_000;
    console.log(
      `Redis holds ${(held[0]! / 2 ** 20).toFixed(1)} MB with 10,000 waiting, ${(held[1]! / 2 ** 20).toFixed(1)} MB with 20,000; put at ${(20_000 / seconds).toFixed(0)} a second by one producer (appendfsync everysec)`,
    );
    keeps('memory of Redis for each that waits, bytes', each, {
      side: 'most',
      goal: 1024,
      holds: 2048,
    });
  },
  600_000,
);

test.skipIf(!isThere)(
  'what the queue costs of each tiny recording, over judging and filing it without one',
  async () => {
    const texts = [1, 2, 3, 4].map((seed) => recordingText({ seed, interval: 0.02, strokes: 1 }));
    const recordings = join(folder, 'recordings');
    manyRecordings(recordings, texts, tiny);
    const lanes = availableParallelism();

    const job = await loadJob(jobPath);
    const names = readdirSync(recordings, { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.csv'),
    );
    const sink = join(folder, 'alone');
    mkdirSync(sink);
    const { write } = folderStorage(sink);
    const time = async (work: () => Promise<void>) => {
      const begun = performance.now();
      await work();
      return (performance.now() - begun) / 1000;
    };
    const bare = await time(async () => {
      for (const name of names) await judgeOne(join(recordings, name), job, { file: name });
    });
    const filed = await time(async () => {
      for (const name of names) {
        const result = await judgeOne(join(recordings, name), job, { file: name });
        await write(
          `results/${result.key!.slice(0, 2)}/${result.key}.json`,
          Buffer.from(JSON.stringify(result)),
        );
      }
    });
    for (const fsync of ['everysec', 'always']) {
      redis = await redisServer({ more: ['--appendfsync', fsync] });
      const results = join(folder, `results-${fsync}`);
      mkdirSync(results);
      const at = ['--redis', redis.address];
      const putting = await time(async () => {
        const { code } = await runQueue([
          ...['put', ...at, '--folder', recordings, '--job', jobPath, recordings],
        ]);
        expect(code).toBe(0);
      });
      const worker = startQueue([
        ...['work', ...at, '--recordings', recordings, '--results', results, '--listen', 'none'],
      ]);
      // From the first result on: how long a program takes to start is no matter of the queue.
      while (filedNames(results).length === 0) await pause(2);
      const first = filedNames(results).length;
      const took = await time(async () => {
        while (filedNames(results).length < tiny) await pause(50);
      });
      worker.child.kill('SIGTERM');
      expect(await worker.ended).toBe(0);
      const rate = (tiny - first) / took;
      const each = (1000 * lanes) / rate;
      console.log(
        `appendfsync ${fsync}: ${rate.toFixed(0)} recordings a second by ${lanes} processes; put at ${(tiny / putting).toFixed(0)} a second with the start of the command. ` +
          `Of each processor's time ${each.toFixed(2)} ms a recording; judging alone takes ${((1000 * bare) / tiny).toFixed(2)} ms, with filing ${((1000 * filed) / tiny).toFixed(2)} ms: the queue ${(each - (1000 * filed) / tiny).toFixed(2)} ms`,
      );
      keeps(
        `a recording through the queue / judged and filed alone (${fsync})`,
        each / ((1000 * filed) / tiny),
        {
          side: 'most',
          goal: 1.5,
          holds: 3,
        },
      );
      await redis.remove();
    }
  },
  600_000,
);
