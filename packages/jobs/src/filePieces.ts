import { type FileHandle, open } from 'node:fs/promises';
import { InputError, type InputErrorCode } from '@truesweep/core';
import { checkPath } from './checkInput.js';

const wrongs: Readonly<Record<string, readonly [code: InputErrorCode, sentence: string]>> = {
  ENOENT: ['missing-file', 'There is no such file; check its name and folder.'],
  EISDIR: ['not-a-file', 'This is a folder; name a file in it.'],
  EACCES: ['unreadable-file', 'The file may not be read; ask its owner for the right to.'],
};

/** How much is read at a time, bytes. */
const pieceBytes = 2 ** 20;

/**
 * Reads a file a piece at a time, in the memory of one piece: each holds only until the next is asked for.
 *
 * @param path Path of the file, from the working directory; a device or a pipe is read too, for as long as it gives.
 * @returns Up to 1 MB (2²⁰ bytes) at a time.
 * @throws InputError `missing-file`, `not-a-file` or `unreadable-file`, with the path.
 *
 * @example
 * let size = 0;
 * for await (const piece of filePieces('LICENSE')) size += piece.length;
 * size > 0 // => true
 */
export async function* filePieces(path: string): AsyncGenerator<Uint8Array> {
  checkPath(path);
  const file = await toldOf(path, () => open(path));
  try {
    yield* piecesIn(file, path);
  } finally {
    await file.close();
  }
}

async function* piecesIn(file: FileHandle, path: string): AsyncGenerator<Uint8Array> {
  const place = new Uint8Array(pieceBytes);
  for (;;) {
    const { bytesRead } = await toldOf(path, () => file.read(place, 0, pieceBytes));
    if (bytesRead === 0) return;
    yield place.subarray(0, bytesRead);
  }
}

async function toldOf<Result>(path: string, work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (error) {
    throw fileRefusal(path, error);
  }
}

/** What the system refuses of a file, as a refusal. */
export function fileRefusal(path: string, error: unknown): InputError {
  const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error);
  const [code, sentence] = wrongs[reason] ?? [
    'unreadable-file',
    `The system could not read the file (${reason}); try it from another place.`,
  ];
  return new InputError(code, path, sentence);
}
