import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
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
