import fileSystem, {
  lstat,
  mkdtemp,
  readdir,
  readFile,
  rm,
  symlink,
  utimes,
  writeFile,
} from 'node:fs/promises';
import { syncBuiltinESMExports } from 'node:module';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from 'vitest';
import { writeFileAtomically } from './writeFileAtomically.js';

let folder: string;
const at = (name: string) => join(folder, name);
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'truesweep-atomic-'));
});
afterAll(() => rm(folder, { recursive: true }));

test('writes text and bytes, and leaves nothing else behind', async () => {
  await writeFileAtomically(at('a.txt'), 'Ω');
  await writeFileAtomically(at('b.bin'), Uint8Array.of(0, 255));
  expect(await readFile(at('a.txt'), 'utf8')).toBe('Ω');
  expect([...(await readFile(at('b.bin')))]).toEqual([0, 255]);
  expect((await readdir(folder)).sort()).toEqual(['a.txt', 'b.bin']);
});

test('overwrites only when asked to', async () => {
  await writeFile(at('old.txt'), 'old');
  await expect(writeFileAtomically(at('old.txt'), 'new')).rejects.toMatchObject({
    code: 'file-exists',
    path: at('old.txt'),
  });
  expect(await readFile(at('old.txt'), 'utf8')).toBe('old');
  await writeFileAtomically(at('old.txt'), 'new', { overwrite: true });
  expect(await readFile(at('old.txt'), 'utf8')).toBe('new');
});

test.each([
  ['old.txt/below.txt', 'A part of its path is a file'],
  ['nowhere/new.txt', 'Its folder does not exist'],
  ['.', 'This is a folder'],
])('%s is refused with what to do', async (name, sentence) => {
  await writeFile(at('old.txt'), 'old');
  await expect(
    writeFileAtomically(name === '.' ? folder : at(name), 'new', { overwrite: true }),
  ).rejects.toMatchObject({ code: 'cannot-write', message: expect.stringContaining(sentence) });
});

describe.skipIf(process.platform === 'win32')(
  'what is no plain file is neither replaced nor written to',
  () => {
    test.each([
      ['link', 'a link'],
      ['dangling', 'a link'],
      ['socket', 'no plain file'],
    ])('%s', async (name, what) => {
      await writeFile(at('behind.txt'), 'old');
      const server = createServer();
      if (name === 'socket') await new Promise<void>((done) => server.listen(at(name), done));
      else await symlink(at(name === 'link' ? 'behind.txt' : 'nothing.txt'), at(name));
      const before = await lstat(at(name));
      for (const overwrite of [true, false]) {
        await expect(writeFileAtomically(at(name), 'new', { overwrite })).rejects.toMatchObject({
          code: 'cannot-write',
          path: at(name),
          message: expect.stringContaining(what),
        });
      }
      expect(await lstat(at(name))).toMatchObject({ ino: before.ino, mode: before.mode });
      expect(await readFile(at('behind.txt'), 'utf8')).toBe('old');
      server.close();
    });
  },
);

describe('where files cannot have a second name', () => {
  const withoutLinks = (code: string) => {
    const refused = Object.assign(new Error(code), { code });
    vi.spyOn(fileSystem, 'link').mockRejectedValue(refused);
    syncBuiltinESMExports();
  };
  afterEach(() => {
    vi.restoreAllMocks();
    syncBuiltinESMExports();
  });

  test.each(['EPERM', 'ENOTSUP', 'ENOSYS', 'EMLINK', 'EISDIR'])(
    'a first save is done (%s), and nothing is replaced unasked',
    async (code) => {
      withoutLinks(code);
      const path = at(`fat-${code}.txt`);
      await writeFileAtomically(path, 'first');
      expect(await readFile(path, 'utf8')).toBe('first');
      await expect(writeFileAtomically(path, 'second')).rejects.toMatchObject({
        code: 'file-exists',
      });
      expect(await readFile(path, 'utf8')).toBe('first');
      await writeFileAtomically(path, 'third', { overwrite: true });
      expect(await readFile(path, 'utf8')).toBe('third');
    },
  );
});

describe('what killed saves left', () => {
  const left = (name: string) => at(`${name}.truesweep-0123456789ab.part`);

  test('is removed by the next save in that folder, what is being written is not', async () => {
    for (const name of ['long-ago.txt', 'just-now.txt']) await writeFile(left(name), 'ha');
    const hourAgo = new Date(Date.now() - 3_600_000);
    await utimes(left('long-ago.txt'), hourAgo, hourAgo);
    await writeFile(at('somebodys.part'), 'theirs');
    await utimes(at('somebodys.part'), hourAgo, hourAgo);
    await writeFileAtomically(at('another.txt'), 'whole');
    const names = await readdir(folder);
    expect(names).not.toContain('long-ago.txt.truesweep-0123456789ab.part');
    expect(names).toContain('just-now.txt.truesweep-0123456789ab.part');
    expect(names).toContain('somebodys.part');
  });
});
