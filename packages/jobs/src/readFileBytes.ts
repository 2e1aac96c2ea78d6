import { readFile } from 'node:fs/promises';
import { InputError, type InputErrorCode } from '@truesweep/core';
import { checkPath } from './checkInput.js';

const wrongs: Readonly<Record<string, readonly [code: InputErrorCode, sentence: string]>> = {
  ENOENT: ['missing-file', 'There is no such file; check its name and folder.'],
  EISDIR: ['not-a-file', 'This is a folder; name a file in it.'],
  EACCES: ['unreadable-file', 'The file may not be read; ask its owner for the right to.'],
};

/**
 * Reads a whole file.
 *
 * @param path Path of the file, from the working directory.
 * @throws InputError `missing-file`, `not-a-file` or `unreadable-file`, with the path.
 *
 * @example
 * const bytes = await readFileBytes('LICENSE');
 * bytes.length > 0 // => true
 */
export async function readFileBytes(path: string): Promise<Uint8Array> {
  checkPath(path);
  try {
    return await readFile(path);
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    const [code, sentence] = wrongs[reason] ?? [
      'unreadable-file',
      `The system could not read the file (${reason}); try it from another place.`,
    ];
    throw new InputError(code, path, sentence);
  }
}
