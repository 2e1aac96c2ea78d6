import { fstatSync, type Stats } from 'node:fs';
import { stat } from 'node:fs/promises';
import { InputError } from '@truesweep/core';
import { filePieces } from '@truesweep/jobs/node';
import { standardInputName } from '@truesweep/wording';
import type { InputBounds } from './inputBounds.js';

/** The name that stands for the standard input. */
export const standardInput = '-';

/** What is told of a file before it is read. */
export interface FileAhead {
  /** Its size, bytes; left out where only reading tells it. */
  readonly size?: number;
  /** Whether it can be read once more from its beginning. */
  readonly isAgain: boolean;
}

/** After so long that an input gives nothing a person is told, ms. */
const patience = 1000;

/** What the system tells of a file, or of what stands behind the standard input. */
export async function fileAhead(path: string): Promise<FileAhead> {
  const isStandard = path === standardInput;
  const there = isStandard ? statOfStandardInput() : await stat(path).catch(() => undefined);
  if (!there?.isFile()) return { isAgain: false };
  return { size: there.size, isAgain: !isStandard };
}

function statOfStandardInput(): Stats | undefined {
  try {
    return fstatSync(process.stdin.fd);
  } catch {
    return undefined;
  }
}

/**
 * The bytes of a file, or of the standard input for `-`, in pieces that hold until the next is asked for; no more than its bounds allow.
 *
 * @throws InputError `file-too-large`, where its size is known before anything is read; or what can't be read.
 */
export async function* inputPieces(path: string, bounds: InputBounds): AsyncGenerator<Uint8Array> {
  const { size: whole = 0 } = await fileAhead(path);
  if (whole > bounds.largest) refuseLarge(path, bounds, whole);
  const isStandard = path === standardInput;
  const pieces = isStandard ? standardPieces() : filePieces(path);
  const waiting = setTimeout(
    () => bounds.onWaiting(isStandard ? `the ${standardInputName}` : path),
    patience,
  );
  let read = 0;
  try {
    for await (const piece of pieces) {
      clearTimeout(waiting);
      read += piece.length;
      if (read > bounds.largest) refuseLarge(path, bounds, 2 * bounds.largest);
      yield piece;
    }
  } finally {
    clearTimeout(waiting);
  }
}

async function* standardPieces(): AsyncGenerator<Uint8Array> {
  try {
    yield* process.stdin;
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    const wrong = `The system could not read the file (${reason}); try it from another place.`;
    throw new InputError('unreadable-file', standardInputName, wrong);
  }
}

function refuseLarge(path: string, { tooLarge }: InputBounds, bytes: number): never {
  const name = path === standardInput ? standardInputName : path;
  throw new InputError('file-too-large', name, tooLarge(bytes));
}
