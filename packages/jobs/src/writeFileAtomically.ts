import { randomBytes } from 'node:crypto';
import { link, lstat, open, rename, rm } from 'node:fs/promises';
import { checkFields, InputError } from '@truesweep/core';
import { checkBytes, checkPath } from './checkInput.js';
import { shown } from './refusal.js';
import { removeAbandoned } from './removeAbandoned.js';

const wrongs: Readonly<Record<string, string>> = {
  EEXIST: 'There is a file of this name already; choose another name, or ask to overwrite it.',
  ENOSPC: 'The disk is full; make room or write to another one.',
  EFBIG: 'The file would be larger than this account may write; write to another place.',
  EDQUOT: 'The quota of this account is used up; make room or write to another place.',
  ENOENT: 'Its folder does not exist; make it first, or choose another.',
  ENOTDIR: 'A part of its path is a file, not a folder; choose another folder.',
  EISDIR: 'This is a folder; name a file in it.',
  EACCES: 'The folder may not be written to; choose another, or ask its owner for the right to.',
  EPERM: 'The folder may not be written to; choose another, or ask its owner for the right to.',
  EROFS: 'The disk is read-only; write to another one.',
};

/**
 * Writes a whole file, or leaves what was there as it was: the data goes to a new file beside it, to the disk, and only then under
 * its name. A program that is stopped in between leaves the old file or the new one, never a half (on a file system without second
 * names a first write may leave an empty file); what it leaves beside it the next write to that folder removes.
 *
 * @param path Path of the file, from the working directory.
 * @param data A text, bytes, or either in pieces, of which no more than one is held.
 * @param overwrite Whether a plain file of that name may be replaced; when left out nothing is. A link, a device or a pipe never is.
 * @throws InputError `file-exists` or `cannot-write`, with the path and what to do.
 *
 * @example
 * const refused = await writeFileAtomically('LICENSE', 'text').catch(({ code }) => code);
 * refused // => 'file-exists'
 */
export async function writeFileAtomically(
  path: string,
  data: string | Uint8Array | AsyncIterable<string | Uint8Array>,
  options: { readonly overwrite?: boolean } = {},
): Promise<void> {
  checkPath(path);
  if (typeof data !== 'string' && !isPieces(data)) checkBytes(data, 'data');
  const { overwrite = false } = checkedOptions(options);
  await refuseWhatIsNoFile(path);
  const partial = `${path}.truesweep-${randomBytes(6).toString('hex')}.part`;
  try {
    await writeWhole(partial, data);
    await removeAbandoned(partial);
    await (overwrite ? rename(partial, path) : renameToNew(partial, path));
  } catch (error) {
    throw refusal(path, error);
  } finally {
    await rm(partial, { force: true }).catch(() => {});
  }
}

function checkedOptions(options: { readonly overwrite?: boolean }) {
  checkFields(options, 'options', {
    'overwrite?': (value, at) => {
      if (typeof value === 'boolean') return;
      throw new InputError(
        'not-boolean',
        at,
        `${at} is ${shown(value)}; it must be true or false.`,
      );
    },
  });
  return options;
}

/** What would be lost by a rename over it, without being the file that was meant. */
async function refuseWhatIsNoFile(path: string): Promise<void> {
  const there = await lstat(path).catch(() => undefined);
  if (!there || there.isFile() || there.isDirectory()) return;
  const sentence = there.isSymbolicLink()
    ? 'This is a link; name the file itself.'
    : 'This is no plain file but a device, a pipe or a socket; name a file.';
  throw new InputError('cannot-write', path, `Nothing was written. ${sentence}`);
}

function isPieces(data: unknown): data is AsyncIterable<string | Uint8Array> {
  return typeof data === 'object' && data !== null && Symbol.asyncIterator in data;
}

async function writeWhole(
  path: string,
  data: string | Uint8Array | AsyncIterable<string | Uint8Array>,
): Promise<void> {
  const file = await open(path, 'wx');
  try {
    await file.writeFile(data);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Gives a file a name that no other file has. */
async function renameToNew(partial: string, path: string): Promise<void> {
  try {
    await link(partial, path);
  } catch (error) {
    if (reasonOf(error) === 'EEXIST') throw error;
    // The file system may know no second names (FAT, many network shares): an empty file takes the name first.
    await (await open(path, 'wx')).close();
    await rename(partial, path).catch(async (failure) => {
      await rm(path, { force: true });
      throw failure;
    });
  }
}

function reasonOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : String(error);
}

function refusal(path: string, error: unknown): InputError {
  const reason = reasonOf(error);
  const code = reason === 'EEXIST' ? 'file-exists' : 'cannot-write';
  const sentence = wrongs[reason] ?? `The system refused it (${reason}); write to another place.`;
  return new InputError(code, path, `Nothing was written. ${sentence}`);
}
