import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { askRedis } from './askRedis.js';
import { faultyOpening } from './faultyOpening.js';
import { endAll } from './queueCommand.js';
import { type RedisServer, redisServer } from './redisServer.js';
import { hasSaid, judgedAlone, type Workshop, withoutTime, workshop } from './workshop.js';

const why = inject('noRedis');
let redis: RedisServer;
beforeAll(async () => {
  if (why === '') redis = await redisServer();
});
afterEach(endAll);
afterAll(() => redis?.remove());

/** Why each is parked, by its file. */
const reasons = async (shop: Workshop) =>
  Object.fromEntries((await shop.parked()).map(({ file, reason }) => [file, reason]));

async function ended(worker: ReturnType<Workshop['work']>): Promise<void> {
  worker.child.kill('SIGTERM');
  expect(await worker.ended).toBe(0);
}

describe.skipIf(why !== '')(
  'what can’t be judged is parked with its reason, the others go on',
  () => {
    test('data that is no message, of another program, or damaged', async () => {
      const shop = workshop(redis);
      const names = shop.record(6);
      await shop.put();
      const asked = await askRedis(redis.port);
      const key = (id: string) => `truesweep:${shop.queue}:${id}`;
      /** As a foreign program might, past everything that checks. */
      const push = async (id: string, data: string, name = 'judge') => {
        await asked.ask(
          'HSET',
          key(id),
          'name',
          name,
          'data',
          data,
          'opts',
          '{}',
          'timestamp',
          '1',
        );
        await asked.ask('LPUSH', key('wait'), id);
      };
      await push('text', '"hello"');
      await push('newer', '{"version":2,"file":"later.csv"}');
      await push('half', '{"version":1,"file":"half.csv"');
      await push(
        'climbing',
        JSON.stringify({
          version: 1,
          recording: { in: 'folder', name: '../../etc/passwd', bytes: 1, sha256: 'a'.repeat(64) },
          definition: 'b'.repeat(64),
          file: 'climbing.csv',
        }),
      );
      await push(
        'borrowed-id',
        JSON.stringify({
          version: 1,
          recording: { in: 'folder', name: names[0], bytes: 1, sha256: 'a'.repeat(64) },
          definition: 'b'.repeat(64),
          file: 'borrowed.csv',
        }),
      );
      asked.end();
      const worker = shop.work(['--takeovers', '1']);
      await shop.settled();
      const parked = await shop.parked();
      const byId = Object.fromEntries(parked.map(({ id, reason }) => [id, reason]));
      expect(byId).toEqual({
        text: expect.stringMatching(/^This is no message: message must be a group of fields/),
        newer: expect.stringMatching(
          /^This is no message: .*version 2; this worker reads version 1/,
        ),
        half: 'What Redis holds of it is damaged; drop it, and put the recording anew.',
        climbing: expect.stringMatching(/^This is no message: message\.recording\.name must be/),
        'borrowed-id': expect.stringMatching(/^Its id is not that of what it holds/),
      });
      expect(shop.filedResults().map(({ file }) => file)).toEqual(
        expect.arrayContaining([...names]),
      );
      await ended(worker);
      shop.remove();
    });

    test('a job that the queue doesn’t hold any more, or that is wrong; put back once it is mended', async () => {
      const shop = workshop(redis);
      const names = shop.record(2, 'jj');
      await shop.put([], ['jj0.csv']);
      const job = JSON.parse(readFileSync(shop.job, 'utf8'));
      job.title = 'Another job';
      const other = join(shop.folder, 'other.job.json');
      writeFileSync(other, JSON.stringify(job));
      await shop.put(['--job', other], ['jj1.csv']);
      const asked = await askRedis(redis.port);
      const key = `truesweep:${shop.queue}:definitions`;
      const ids = (await asked.ask('HKEYS', key)).match(/[0-9a-f]{64}/g) ?? [];
      expect(ids).toHaveLength(2);
      const [lost, wrong] = ids as unknown as [string, string];
      const before = await asked.ask('HGET', key, lost);
      await asked.ask('HDEL', key, lost);
      const kept = await asked.ask('HGET', key, wrong);
      await asked.ask('HSET', key, wrong, '{"version":3,"title":"Nothing else"}');
      const worker = shop.work();
      await shop.settled();
      const all = Object.values(await reasons(shop)).join('\n');
      expect(await shop.parked()).toHaveLength(2);
      expect(all).toMatch(/The job that the queue holds is wrong: .*job\.sensor/);
      expect(all).toMatch(/The queue holds no job of the id [0-9a-f]{12}…/);
      // Put a second time it is still parked, and that is told.
      expect((await shop.put([], ['jj0.csv'])).out).toMatch(/^0 recordings put, 1 parked/);
      await asked.ask('HSET', key, lost, before);
      await asked.ask('HSET', key, wrong, kept);
      expect((await shop.run(['parked', '--retry', 'all'])).out).toBe(
        '2 parked messages put back to be tried again.\n',
      );
      await shop.settled();
      expect(await shop.parked()).toEqual([]);
      expect(shop.filedFiles()).toEqual(names);
      asked.end();
      await ended(worker);
      shop.remove();
    });

    test('a recording that ends its process, needs too much memory or never ends; others beside it are judged', async () => {
      const shop = workshop(redis);
      const names = shop.record(8, 'ccc');
      const [fatal, greedy, endless] = names;
      for (const [from, to] of [
        [fatal, 'fatal.csv'],
        [greedy, 'greedy.csv'],
        [endless, 'endless.csv'],
      ])
        renameSync(join(shop.recordings, from!), join(shop.recordings, to!));
      await shop.put();
      const env = faultyOpening(shop.folder);
      const worker = shop.work(['--memory', '128 MB', '--longest', '5 s'], { env });
      await shop.settled();
      expect(await reasons(shop)).toEqual({
        'fatal.csv': expect.stringMatching(/ended 3 times \(SIGSEGV\)/),
        'greedy.csv': expect.stringMatching(/needs more memory than the 128 MB/),
        'endless.csv': expect.stringMatching(/took longer than 5 s/),
      });
      const openings = readFileSync(join(shop.folder, 'openings.txt'), 'utf8').split('\n');
      const opened = (name: string) => openings.filter((one) => one === name).length;
      expect(['fatal.csv', 'greedy.csv', 'endless.csv'].map(opened)).toEqual([3, 1, 1]);
      expect(shop.filedFiles()).toEqual(names.slice(3));
      expect(worker.said.err).toMatch(
        /fatal\.csv: parked\. The process that judged it ended 3 times/,
      );
      // A worker without the fault judges them, once the operator says so.
      await ended(worker);
      const [{ id = '' } = {}] = (await shop.parked()).filter(({ file }) => file === 'fatal.csv');
      expect((await shop.run(['parked', '--retry', id.slice(0, 12)])).code).toBe(0);
      expect((await shop.run(['parked', '--drop', 'all'])).out).toMatch(
        /^2 parked messages dropped/,
      );
      const sound = shop.work();
      await shop.settled();
      await ended(sound);
      expect(await shop.parked()).toEqual([]);
      const result = shop.filedResults().find(({ file }) => file === 'fatal.csv');
      expect(result && withoutTime(result)).toEqual(await judgedAlone(shop, 'fatal.csv'));
      shop.remove();
    });

    test('a recording that ends the whole worker each time is parked once it has ended enough of them', async () => {
      const shop = workshop(redis);
      const names = shop.record(3, 'dddd');
      renameSync(join(shop.recordings, names[0]!), join(shop.recordings, 'deadly.csv'));
      await shop.put();
      const env = faultyOpening(shop.folder);
      let starts = 0;
      // As the system's service manager would.
      for (let isParked = false; !isParked && starts < 10; starts++) {
        const worker = shop.work(['--takeover', '500 ms', '--takeovers', '1', '--at-once', '1'], {
          env,
        });
        const settled = shop.settled().then(() => true);
        isParked = await Promise.race([settled, worker.ended.then(() => false)]);
        if (isParked) await ended(worker);
        else settled.catch(() => {});
      }
      expect(await reasons(shop)).toEqual({
        'deadly.csv': expect.stringMatching(/^Its worker ended or stood still again and again/),
      });
      expect(starts).toBeGreaterThan(2);
      expect(shop.filedFiles()).toEqual(names.slice(1));
      shop.remove();
    });
  },
);

test.skipIf(why !== '')(
  'a judgement that takes much longer than a takeover keeps what it has',
  async () => {
    const shop = workshop(redis);
    const names = shop.record(2, 'lllll');
    renameSync(join(shop.recordings, names[0]!), join(shop.recordings, 'slow.csv'));
    await shop.put();
    const env = faultyOpening(shop.folder);
    // The other one would take it over.
    const workers = [1, 2].map(() => shop.work(['--takeover', '500 ms', '--each'], { env }));
    await shop.settled();
    const openings = readFileSync(join(shop.folder, 'openings.txt'), 'utf8').split('\n');
    expect(openings.filter((one) => one === 'slow.csv')).toHaveLength(1);
    for (const worker of workers) {
      expect(worker.said.err).not.toContain('taken over');
      await ended(worker);
    }
    expect(shop.filedResults()).toHaveLength(2);
    shop.remove();
  },
);

test.skipIf(why !== '')(
  'what is refused for another reason than its bytes is filed by the message, and goes once it is judged',
  async () => {
    const shop = workshop(redis);
    const [name = ''] = shop.record(1, 'ffffff');
    await shop.put();
    const path = join(shop.recordings, name);
    const text = readFileSync(path, 'utf8');
    writeFileSync(path, `${text}9.99,1.0\n`);
    const worker = shop.work(['--each']);
    await hasSaid(worker, `${name}: refused`);
    await shop.settled();
    expect(shop.filedResults()).toMatchObject([
      { file: name, refused: { code: 'recording-changed' } },
    ]);
    expect(existsSync(join(shop.results, 'refused'))).toBe(true);
    writeFileSync(path, text);
    await shop.put();
    await shop.settled();
    expect(shop.filedResults().map(withoutTime)).toEqual([await judgedAlone(shop, name)]);
    await ended(worker);
    shop.remove();
  },
);
