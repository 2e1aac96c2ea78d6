import { randomBytes } from 'node:crypto';
import { link, open, rename, rm } from 'node:fs/promises';
import { InputError } from '@truesweep/core';

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
 * its name. A program that is stopped in between leaves the old file or the new one, never a half.
 *
 * @param path Path of the file, from the working directory.
 * @param overwrite Whether a file of that name may be replaced; when left out nothing is.
 * @throws InputError `file-exists` or `cannot-write`, with the path and what to do.
 *
 * @example
 * const refused = await writeFileAtomically('LICENSE', 'text').catch(({ code }) => code);
 * refused // => 'file-exists'
 */
export async function writeFileAtomically(
  path: string,
  data: string | Uint8Array,
  { overwrite = false }: { readonly overwrite?: boolean } = {},
): Promise<void> {
  const partial = `${path}.${randomBytes(6).toString('hex')}.part`;
  try {
    await writeWhole(partial, data);
    await (overwrite ? rename(partial, path) : link(partial, path));
  } catch (error) {
    throw refusal(path, error);
  } finally {
    await rm(partial, { force: true }).catch(() => {});
  }
}

async function writeWhole(path: string, data: string | Uint8Array): Promise<void> {
  const file = await open(path, 'wx');
  try {
    await file.writeFile(data);
    await file.sync();
  } finally {
    await file.close();
  }
}

function refusal(path: string, error: unknown): InputError {
  const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error);
  const code = reason === 'EEXIST' ? 'file-exists' : 'cannot-write';
  const sentence = wrongs[reason] ?? `The system refused it (${reason}); write to another place.`;
  return new InputError(code, path, `Nothing was written. ${sentence}`);
}
