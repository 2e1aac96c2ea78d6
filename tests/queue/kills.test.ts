import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { soak } from '../counts.js';
import { askRedis } from './askRedis.js';
import { draws } from './draws.js';
import { endAll, type QueueRun, startQueue } from './queueCommand.js';
import { type RedisServer, redisServer } from './redisServer.js';
import {
  filedNames,
  judgedAlone,
  pause,
  type Workshop,
  withoutTime,
  workshop,
} from './workshop.js';

const why = inject('noRedis');
let redis: RedisServer;
beforeAll(async () => {
  if (why === '') redis = await redisServer();
});
afterEach(endAll);
afterAll(() => redis?.remove());

/** One whole result of each recording, nothing else, and each what judging by itself says. */
async function expectEachOnce(shop: Workshop, names: readonly string[]): Promise<void> {
  expect(await shop.parked()).toEqual([]);
  const filed = shop.filedResults();
  expect(filed.map(({ file }) => file).toSorted()).toEqual(names.toSorted());
  expect(filedNames(shop.results)).toHaveLength(names.length);
  const alone = new Map<string, object>();
  for (const name of names) alone.set(name, await judgedAlone(shop, name));
  for (const result of filed) expect(withoutTime(result)).toEqual(alone.get(result.file));
}

async function ended(worker: QueueRun, signal: NodeJS.Signals): Promise<void> {
  worker.child.kill(signal);
  await worker.ended;
}

describe.skipIf(why !== '')('killed at random moments', () => {
  const count = 60 * Math.min(soak, 10);

  test('workers', async () => {
    const draw = draws('workers killed', 20_261_201);
    const shop = workshop(redis);
    const names = shop.record(count, 'w');
    expect((await shop.put()).out).toBe(`${count} recordings put.\n`);
    let inTheMiddle = 0;
    // One is killed again and again, one goes on.
    const lasting = shop.work(['--at-once', '1']);
    for (let i = 0; i < 6 * Math.min(soak, 10); i++) {
      const worker = shop.work(['--at-once', '2']);
      await shop.filed(Math.min(count - 1, filedNames(shop.results).length + 1));
      await pause(150 * draw());
      await ended(worker, 'SIGKILL');
      const filed = filedNames(shop.results).length;
      if (filed > 0 && filed < count) inTheMiddle += 1;
    }
    await shop.settled();
    await ended(lasting, 'SIGTERM');
    expect(inTheMiddle).toBeGreaterThan(0);
    await expectEachOnce(shop, names);
    shop.remove();
  });

  test('producers', async () => {
    const draw = draws('producers killed', 20_261_202);
    const shop = workshop(redis);
    const names = shop.record(count, 'pp');
    const asked = await askRedis(redis.port);
    const waiting = async () => Number(await asked.ask('LLEN', `truesweep:${shop.queue}:wait`));
    let inTheMiddle = 0;
    for (let i = 0; i < 5 * Math.min(soak, 10); i++) {
      const before = await waiting();
      const producer = startQueue([
        ...['put', ...shop.at, '--folder', shop.recordings, '--job', shop.job],
        shop.recordings,
      ]);
      // Some get nothing done, some a little more than those before.
      const more = before + Math.floor(10 * draw());
      while ((await waiting()) < more && producer.child.exitCode === null) await pause(0);
      await ended(producer, 'SIGKILL');
      const put = await waiting();
      if (put > 0 && put < count) inTheMiddle += 1;
    }
    asked.end();
    expect(inTheMiddle).toBeGreaterThan(0);
    expect((await shop.put()).code).toBe(0);
    const worker = shop.work();
    await shop.settled();
    await ended(worker, 'SIGTERM');
    await expectEachOnce(shop, names);
    shop.remove();
  });

  test('Redis itself, which keeps each write on the disk before it answers', async () => {
    const draw = draws('Redis killed', 20_261_203);
    const own = await redisServer();
    const shop = workshop(own);
    const names = shop.record(count, 'rrr');
    const worker = shop.work();
    // A producer whose Redis goes says so, and the same command goes on.
    for (let i = 0; i < 4 * Math.min(soak, 10); i++) {
      const putting = shop.put();
      await pause(700 * draw());
      await own.kill();
      await pause(100 * draw());
      await own.start();
      const { code, err } = await putting;
      if (code !== 0) expect([code, err]).toEqual([1, expect.stringContaining('not reachable')]);
    }
    expect((await shop.put()).code).toBe(0);
    await shop.settled();
    await ended(worker, 'SIGTERM');
    expect(worker.said.err).toContain('not reachable');
    expect(worker.said.err).toContain('Redis is reachable again.');
    await expectEachOnce(shop, names);
    await own.remove();
    shop.remove();
  });
});

test.skipIf(why !== '')('what a worker has that stands still is taken over', async () => {
  const shop = workshop(redis);
  const names = shop.record(40, 'ssss');
  await shop.put();
  const still = shop.work(['--at-once', '2']);
  await shop.filed(2);
  still.child.kill('SIGSTOP');
  const other = shop.work(['--at-once', '1']);
  await shop.settled();
  still.child.kill('SIGCONT');
  await pause(200);
  await ended(still, 'SIGTERM');
  await ended(other, 'SIGTERM');
  await expectEachOnce(shop, names);
  // What the judging processes of the one that stood still left unfinished is nowhere among the results.
  rmSync(join(shop.results, '.partial'), { recursive: true, force: true });
  shop.remove();
});
