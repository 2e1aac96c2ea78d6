import { randomBytes } from 'node:crypto';
import { chmodSync, mkdirSync, readdirSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { objectStore } from './objectStore.js';
import { endAll, type QueueRun, startQueue } from './queueCommand.js';
import { type RedisServer, redisServer } from './redisServer.js';
import { filedNames, hasSaid, judgedAlone, pause, withoutTime, workshop } from './workshop.js';

const why = inject('noRedis');
const isRoot = process.getuid?.() === 0;
let redis: RedisServer;
beforeAll(async () => {
  if (why === '') redis = await redisServer();
});
afterEach(endAll);
afterAll(() => redis?.remove());

async function ended(worker: QueueRun): Promise<void> {
  worker.child.kill('SIGTERM');
  expect(await worker.ended).toBe(0);
}

describe.skipIf(why !== '')('what may pass is tried again', () => {
  test('recordings whose disk is gone for a while; pauses grow', async () => {
    const shop = workshop(redis);
    const names = shop.record(3);
    await shop.put(['--pause', '200 ms', '--tries', '9']);
    renameSync(shop.recordings, `${shop.recordings}-away`);
    const worker = shop.work();
    const failed = (attempt: number) => hasSaid(worker, `0.csv: try ${attempt} failed`);
    await failed(1);
    const begun = performance.now();
    await failed(3);
    // Two pauses, of 0.1 to 0.2 s and of 0.2 to 0.4 s, whatever the machine does besides.
    expect(performance.now() - begun).toBeGreaterThan(250);
    renameSync(`${shop.recordings}-away`, shop.recordings);
    await shop.settled();
    await ended(worker);
    expect(worker.said.err).toContain('it is not there; make it, or mount its disk');
    expect(await shop.parked()).toEqual([]);
    expect(shop.filedFiles()).toEqual(names);
    shop.remove();
  });

  test('a recording that stays away is parked at last, and judged once it is back', async () => {
    const shop = workshop(redis);
    shop.record(1);
    await shop.put(['--pause', '50 ms', '--tries', '3']);
    const path = join(shop.recordings, '0.csv');
    renameSync(path, join(shop.folder, 'away.csv'));
    const worker = shop.work();
    await shop.settled();
    expect(await shop.parked()).toMatchObject([
      {
        file: '0.csv',
        attempts: 3,
        reason: expect.stringContaining('There is no recording 0.csv'),
      },
    ]);
    expect(filedNames(shop.results)).toEqual([]);
    renameSync(join(shop.folder, 'away.csv'), path);
    await shop.run(['parked', '--retry', 'all']);
    await shop.settled();
    await ended(worker);
    expect(shop.filedResults().map(withoutTime)).toEqual([await judgedAlone(shop, '0.csv')]);
    shop.remove();
  });

  test('results whose disk is full', async () => {
    const shop = workshop(redis);
    const names = shop.record(4);
    await shop.put(['--pause', '50 ms', '--tries', '2']);
    // A limit of the system on how large a file may grow stands for the disk.
    const worker = shop.work([], {
      under: ['sh', '-c', `trap '' XFSZ; ulimit -f 1; exec "$0" "$@"`],
    });
    await shop.settled();
    await ended(worker);
    const parked = await shop.parked();
    expect(parked).toHaveLength(4);
    for (const { reason } of parked) {
      expect(reason).toMatch(/^The folder .* can't be used: the file would be larger/);
    }
    expect(filedNames(shop.results)).toEqual([]);
    expect(readdirSync(join(shop.results, '.partial'))).toEqual([]);
    await shop.run(['parked', '--retry', 'all']);
    const other = shop.work();
    await shop.settled();
    await ended(other);
    expect(shop.filedFiles()).toEqual(names);
    shop.remove();
  });

  test('results that may not be written', async () => {
    const shop = workshop(redis);
    const names = shop.record(2);
    await shop.put(['--pause', '100 ms']);
    chmodSync(shop.folder, 0o755);
    chmodSync(shop.results, 0o555);
    // Root may write everywhere; nobody may not.
    const worker = shop.work([], isRoot ? { uid: 65_534 } : {});
    await hasSaid(worker, /0\.csv: try 1 failed.*this account has no right to it/);
    chmodSync(shop.results, 0o777);
    await shop.settled();
    await ended(worker);
    expect(shop.filedFiles()).toEqual(names);
    shop.remove();
  });

  test('an object store that is gone for a while, with recordings and results in buckets', async () => {
    const shop = workshop(redis);
    const names = shop.record(6);
    const secret = randomBytes(20).toString('hex');
    const store = await objectStore(secret, 'recordings', 'results');
    const env = { TRUESWEEP_S3_KEY_ID: store.keyId, TRUESWEEP_S3_KEY_SECRET: secret };
    const at = [...shop.at, '--endpoint', store.endpoint];
    const put = startQueue(
      [
        ...['put', ...at, '--bucket', 's3://recordings/shop', '--job', shop.job],
        ...['--pause', '100 ms', shop.recordings],
      ],
      { env },
    );
    expect([await put.ended, put.said.out]).toEqual([0, '6 recordings put.\n']);
    store.fail(503);
    const worker = startQueue(
      [
        ...['work', ...at, '--recordings', 's3://recordings/shop', '--results', 's3://results'],
        ...['--listen', 'none', '--takeover', '1 s'],
      ],
      { env },
    );
    await hasSaid(worker, 'it has too much to do');
    store.fail(0);
    await shop.settled();
    await ended(worker);
    const filed = [...store.objects].filter(([name]) => name.startsWith('results/results/'));
    const results = filed.map(([, bytes]) => JSON.parse(bytes.toString()));
    expect(results).toHaveLength(6);
    for (const result of results) {
      const name = names.find((one) => result.file.endsWith(`/${one}`))!;
      expect(withoutTime(result)).toEqual({
        ...(await judgedAlone(shop, name)),
        file: join(shop.recordings, name),
      });
    }
    expect(`${worker.said.err}${put.said.err}${put.said.out}`).not.toContain(secret);
    await store.close();
    shop.remove();
  });
});

describe.skipIf(why !== '')('one result, whatever is done twice', () => {
  test('the same recordings put again, while they wait, and after they were judged', async () => {
    const shop = workshop(redis);
    const names = shop.record(4);
    await shop.put();
    expect((await shop.put()).out).toBe('0 recordings put, 4 in the queue already.\n');
    const worker = shop.work(['--each']);
    await shop.settled();
    expect((await shop.put()).out).toBe('4 recordings put.\n');
    await shop.settled();
    await ended(worker);
    expect(worker.said.err).toContain('Ended: 4 recordings judged, 4 had a result before.');
    expect(shop.filedFiles()).toEqual(names);
    shop.remove();
  });

  test('the same bytes under two names are one recording', async () => {
    const shop = workshop(redis);
    shop.record(1);
    mkdirSync(join(shop.recordings, 'copy'));
    const { copyFileSync } = await import('node:fs');
    copyFileSync(join(shop.recordings, '0.csv'), join(shop.recordings, 'copy/other.csv'));
    expect((await shop.put()).out).toBe('1 recording put, 1 in the queue already.\n');
    const worker = shop.work();
    await shop.settled();
    await ended(worker);
    expect(filedNames(shop.results)).toHaveLength(1);
    shop.remove();
  });
});

describe.skipIf(why !== '')('told to end', () => {
  test('a worker finishes what it has, takes no more, and leaves with 0', async () => {
    const shop = workshop(redis);
    const names = shop.record(60);
    await shop.put();
    const worker = shop.work(['--each', '--at-once', '1']);
    await shop.filed(2);
    await ended(worker);
    const [, judged] = /Ended: (\d+) recordings? judged\.\n$/.exec(worker.said.err) ?? [];
    expect(filedNames(shop.results)).toHaveLength(Number(judged));
    expect(Number(judged)).toBeLessThan(60);
    const { out } = await shop.run(['status', '--json']);
    // Nothing is left in its hands, so that no takeover is needed.
    expect(JSON.parse(out)).toMatchObject({ waiting: 60 - Number(judged), judged: 0, parked: 0 });
    const other = shop.work();
    await shop.settled();
    await ended(other);
    expect(shop.filedFiles()).toEqual(names.toSorted());
    shop.remove();
  });

  test('what is not finished in time is given back, and counts as no try', async () => {
    const { faultyOpening } = await import('./faultyOpening.js');
    const shop = workshop(redis);
    shop.record(1);
    renameSync(join(shop.recordings, '0.csv'), join(shop.recordings, 'endless.csv'));
    await shop.put(['--tries', '1']);
    const env = faultyOpening(shop.folder);
    const worker = shop.work(['--stop-within', '500 ms', '--takeover', '30 s'], { env });
    while (!readdirSync(shop.folder).includes('openings.txt')) await pause(10);
    await ended(worker);
    expect(worker.said.err).toContain('1 recording still judged, for 0.5 s at most');
    expect(worker.said.err).toContain('1 given back to the queue');
    // It is there at once, long before a takeover.
    const other = shop.work();
    await shop.settled();
    await ended(other);
    expect(filedNames(shop.results)).toHaveLength(1);
    shop.remove();
  });
});
