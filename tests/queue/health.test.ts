import { afterEach, expect, inject, test } from 'vitest';
import { freePort } from './freePort.js';
import { endAll } from './queueCommand.js';
import { redisServer } from './redisServer.js';
import { hasSaid, pause, workshop } from './workshop.js';

const why = inject('noRedis');
afterEach(endAll);

/** A line of Prometheus' text format 0.0.4: a name, labels in braces, a number, and a time that may be left out. */
const sample =
  /^([a-zA-Z_:][a-zA-Z0-9_:]*)(?:\{((?:[a-zA-Z_]\w*="(?:[^"\\\n]|\\["\\n])*",?)*)\})? (NaN|[+-]Inf|-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?)(?: -?\d+)?$/;

/** Reads the format strictly; each sample under a type that was told before it. */
function readMetrics(text: string): ReadonlyMap<string, number> {
  expect(text.endsWith('\n')).toBe(true);
  const types = new Map<string, string>();
  const values = new Map<string, number>();
  for (const line of text.slice(0, -1).split('\n')) {
    const type = /^# TYPE (\S+) (counter|gauge|histogram)$/.exec(line);
    if (type) {
      expect(types.has(type[1]!)).toBe(false);
      types.set(type[1]!, type[2]!);
    } else if (!/^# HELP [a-z_]+ \S/.test(line)) {
      const read = sample.exec(line);
      expect(read, line).not.toBeNull();
      const [, name = '', labels = '', value] = read!;
      const family = types.has(name) ? name : name.replace(/_(bucket|sum|count)$/, '');
      expect(types.has(family), line).toBe(true);
      if (types.get(family) === 'counter') expect(name).toMatch(/_total$/);
      const key = labels === '' ? name : `${name}{${labels}}`;
      expect(values.has(key), key).toBe(false);
      values.set(key, Number(value!.replace('Inf', 'Infinity')));
    }
  }
  return values;
}

test.skipIf(why !== '')(
  'a worker tells its health and its figures, at 127.0.0.1 alone',
  async () => {
    const redis = await redisServer();
    const shop = workshop(redis);
    shop.record(5);
    await shop.put();
    const port = await freePort();
    const worker = shop.work(['--listen', `127.0.0.1:${port}`]);
    await hasSaid(worker, `http://127.0.0.1:${port}/healthz`);
    const get = async (path: string, host = '127.0.0.1') => {
      const response = await fetch(`http://${host}:${port}${path}`);
      return { status: response.status, text: await response.text() };
    };
    await shop.settled();
    expect(await get('/healthz')).toEqual({ status: 200, text: 'ok\n' });
    expect(await get('/readyz')).toEqual({ status: 200, text: 'ok\n' });
    expect((await get('/else')).status).toBe(404);
    // It listens nowhere else: this is the same machine by another address.
    await expect(get('/healthz', '127.0.0.2')).rejects.toThrow();
    const metrics = readMetrics((await get('/metrics')).text);
    const of = (name: string) => metrics.get(`truesweep_queue_${name}`);
    const outcomes = [...metrics].filter(([name]) => name.includes('recordings_total'));
    expect(outcomes.reduce((sum, [, value]) => sum + value, 0)).toBe(5);
    expect([of('redis_up'), of('running'), of('messages{state="waiting"}')]).toEqual([1, 0, 0]);
    expect([of('judging_seconds_count'), of('judging_seconds_bucket{le="+Inf"}')]).toEqual([5, 5]);

    await redis.kill();
    const turned = async (status: number) => {
      while ((await get('/readyz')).status !== status) await pause(20);
    };
    await turned(503);
    expect((await get('/readyz')).text).toMatch(
      /^Redis at redis:\/\/127\.0\.0\.1:\d+ is not reachable/,
    );
    expect((await get('/healthz')).status).toBe(200);
    expect(readMetrics((await get('/metrics')).text).get('truesweep_queue_redis_up')).toBe(0);
    await redis.start();
    await turned(200);
    worker.child.kill('SIGTERM');
    expect(await worker.ended).toBe(0);
    await redis.remove();
    shop.remove();
  },
);

test.skipIf(why !== '')(
  'a worker that begins before Redis waits for it, and ends when it is told to',
  async () => {
    const redis = await redisServer();
    const shop = workshop(redis);
    shop.record(1);
    await shop.put();
    await redis.kill();
    const worker = shop.work();
    await hasSaid(worker, 'is not reachable (ECONNREFUSED)');
    const other = shop.work();
    await hasSaid(other, 'is not reachable');
    other.child.kill('SIGTERM');
    expect(await other.ended).toBe(0);
    await redis.start();
    await shop.filed(1);
    worker.child.kill('SIGTERM');
    expect(await worker.ended).toBe(0);
    await redis.remove();
    shop.remove();
  },
);

test.skipIf(why !== '')('a worker whose Redis is gone ends all the same, and soon', async () => {
  const redis = await redisServer();
  const shop = workshop(redis);
  const worker = shop.work(['--stop-within', '500 ms']);
  await hasSaid(worker, 'Judging what comes');
  await redis.kill();
  await hasSaid(worker, 'is not reachable');
  worker.child.kill('SIGTERM');
  expect(await worker.ended).toBe(0);
  await redis.remove();
  shop.remove();
});

test.skipIf(why !== '')('an address that is taken is told', async () => {
  const redis = await redisServer();
  const shop = workshop(redis);
  const port = await freePort();
  const first = shop.work(['--listen', `127.0.0.1:${port}`]);
  await hasSaid(first, 'Health and figures');
  const second = shop.work(['--listen', `127.0.0.1:${port}`]);
  expect(await second.ended).toBe(2);
  expect(second.said.err).toMatch(
    /Health and figures can't be told at .* \(EADDRINUSE\); name another/,
  );
  await redis.remove();
  shop.remove();
});
