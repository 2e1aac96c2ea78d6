import { randomBytes } from 'node:crypto';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bucketStorage, folderStorage, type Storage, StorageFault } from '@truesweep/queue';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { freePort } from './freePort.js';
import { type ObjectStore, objectStore } from './objectStore.js';

let folder: string;
let store: ObjectStore;
const secret = randomBytes(20).toString('hex');
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'truesweep-storages-'));
  store = await objectStore(secret, 'bench');
});
afterAll(async () => {
  rmSync(folder, { recursive: true, force: true });
  await store.close();
});

let made = 0;
const kinds: readonly (readonly [name: string, make: () => Storage])[] = [
  [
    'a folder',
    () => {
      made += 1;
      mkdirSync(join(folder, `at-${made}`));
      return folderStorage(join(folder, `at-${made}`));
    },
  ],
  [
    'a bucket',
    () => {
      made += 1;
      const { endpoint, keyId } = store;
      return bucketStorage({
        endpoint,
        keyId,
        keySecret: secret,
        bucket: 'bench',
        prefix: `at-${made}`,
      });
    },
  ],
];

const fault = (work: Promise<unknown>) =>
  work.then(
    () => 'none',
    (error) => (error instanceof StorageFault ? error.code : String(error)),
  );

describe.each(kinds)('%s', (_, make) => {
  test('keeps what was written first, whole', async () => {
    const storage = make();
    const bytes = randomBytes(200_000);
    expect(await storage.has('ab/one.json')).toBe(false);
    expect(await storage.write('ab/one.json', bytes)).toBe(true);
    expect(await storage.write('ab/one.json', Buffer.from('other'))).toBe(false);
    expect(Buffer.from(await storage.read('ab/one.json', 1e6)).equals(bytes)).toBe(true);
    expect(await storage.has('ab/one.json')).toBe(true);
    await storage.remove('ab/one.json');
    await storage.remove('ab/one.json');
    expect(await storage.has('ab/one.json')).toBe(false);
  });

  test('of many writers at once one makes it', async () => {
    const storage = make();
    const each = Array.from({ length: 20 }, (__, i) => Buffer.from(`${i}`.repeat(5000)));
    const written = await Promise.all(each.map((bytes) => storage.write('one.json', bytes)));
    expect(written.filter((isWritten) => isWritten)).toHaveLength(1);
    const kept = Buffer.from(await storage.read('one.json', 1e6));
    expect(kept.equals(each[written.indexOf(true)]!)).toBe(true);
  });

  test.each(['a b+c.csv', 'Größe (1)!*.csv', "it's 100 %.csv", '2026/a&b=c?.csv', '日本.csv'])(
    'knows the name %s',
    async (name) => {
      const storage = make();
      expect(await storage.write(name, Buffer.from(name))).toBe(true);
      expect(Buffer.from(await storage.read(name, 1000)).toString()).toBe(name);
    },
  );

  test('tells what is missing and what is too large, and takes no name that leads out', async () => {
    const storage = make();
    expect(await fault(storage.read('none.csv', 10))).toBe('missing');
    await storage.write('large.csv', Buffer.alloc(1000));
    expect(await fault(storage.read('large.csv', 999))).toBe('too-large');
    expect(await fault(storage.read('large.csv', 1000))).toBe('none');
    for (const name of ['../x', '/x', 'a//b', 'a/./b', '', 'a\\b', 'a\u0000b'])
      expect(await fault(storage.write(name, Buffer.from('')))).toMatch(/^TypeError/);
  });
});

test('a folder that is not there may come back; a link that leads out of it is nothing in it', async () => {
  const gone = folderStorage(join(folder, 'gone'));
  expect(await fault(gone.read('a.csv', 10))).toBe('unreachable');
  expect(await fault(gone.has('a.csv'))).toBe('unreachable');
  expect(await fault(gone.write('a.csv', Buffer.from('')))).toBe('unreachable');
  const inside = join(folder, 'inside');
  mkdirSync(inside);
  writeFileSync(join(folder, 'outside.csv'), 'secret');
  symlinkSync('../outside.csv', join(inside, 'link.csv'));
  writeFileSync(join(inside, 'own.csv'), 'own');
  symlinkSync('own.csv', join(inside, 'own-link.csv'));
  expect(await fault(folderStorage(inside).read('link.csv', 10))).toBe('missing');
  expect(await fault(folderStorage(inside).read('own-link.csv', 10))).toBe('none');
});

test('a folder keeps nothing of a write that failed', async () => {
  const inside = join(folder, 'failing');
  mkdirSync(inside);
  // Where its folder should be is a file.
  writeFileSync(join(inside, 'ab'), '');
  const storage = folderStorage(inside);
  expect(await fault(storage.write('ab/one.json', Buffer.from('{}')))).toBe('unreachable');
  expect(readdirSync(join(inside, '.partial'))).toEqual([]);
});

describe('a bucket whose store refuses', () => {
  const at = (more: object) =>
    bucketStorage({
      endpoint: store.endpoint,
      keyId: store.keyId,
      keySecret: secret,
      bucket: 'bench',
      ...more,
    });
  const sentence = (work: Promise<unknown>) =>
    work.then(
      () => '',
      (error) => (error as Error).message,
    );

  test.each([
    ['a wrong secret', { keySecret: 'f00df00d' }, /does not fit; look at TRUESWEEP_S3_KEY_SECRET/],
    ['an unknown key', { keyId: 'OTHER' }, /not known; look at TRUESWEEP_S3_KEY_ID/],
    ['no bucket', { bucket: 'other' }, /no such bucket/],
  ])('%s is told, without any secret', async (_, more, wanted) => {
    const storage = at(more);
    const said = [
      await sentence(storage.read('a.csv', 10)),
      await sentence(storage.write('a.csv', Buffer.from('a'))),
    ];
    for (const one of said) {
      expect(one).toMatch(wanted);
      expect(one).not.toContain('f00df00d');
      expect(one).not.toContain(secret);
    }
  });

  test('nothing that answers is told', async () => {
    const storage = at({ endpoint: `http://127.0.0.1:${await freePort()}` });
    expect(await sentence(storage.read('a.csv', 10))).toMatch(/nothing answers there/);
  });

  test('one that has too much to do is told as passing', async () => {
    store.fail(503);
    expect(await fault(at({}).has('a.csv'))).toBe('unreachable');
    store.fail(0);
    expect(await fault(at({}).has('a.csv'))).toBe('none');
  });
});
