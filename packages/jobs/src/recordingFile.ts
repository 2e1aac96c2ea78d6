import {
  closeSync,
  constants,
  fstatSync,
  openSync,
  readlinkSync,
  readSync,
  type Stats,
} from 'node:fs';
import { InputError } from '@truesweep/core';
import { fileRefusal } from './filePieces.js';

/** How much is read at a time at most, bytes. */
const pieceBytes = 2 ** 20;

/** A plain file that is open, and can be read through more than once. */
export interface RecordingFile {
  /** Its bytes from the beginning, in pieces that hold until the next is asked for. */
  readonly pieces: () => AsyncIterable<Uint8Array>;
  readonly close: () => void;
}

/**
 * Opens a recording. A pipe, whose writer may never come, doesn't hold it up. It is read at once, not beside other work: a detour by the system's threads takes
 * longer than the reading, and what is judged then keeps the thread for much longer.
 *
 * @param most A larger file is refused, bytes; also where it grows beyond that while it is read.
 * @throws InputError `missing-file`, `not-a-file`, `unreadable-file` or `file-too-large`.
 */
export function openRecording(path: string, most: number): RecordingFile {
  // Windows knows no such flag, and no pipes among files.
  const flags = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0);
  const file = attempt(path, () => openSync(path, flags));
  try {
    const there = attempt(path, () => fstatSync(file));
    if (!there.isFile()) refuseOther(path, there);
    if (there.size > most) refuseLarge(path, most);
    // A byte more than there is to read tells that it was all.
    const place = Buffer.allocUnsafeSlow(Math.min(there.size + 1, pieceBytes));
    return { pieces: () => piecesOf(file, path, place, most), close: () => closeSync(file) };
  } catch (error) {
    closeSync(file);
    throw error;
  }
}

async function* piecesOf(
  file: number,
  path: string,
  place: Buffer,
  most: number,
): AsyncGenerator<Uint8Array> {
  for (let at = 0; ; ) {
    const read = attempt(path, () => readSync(file, place, 0, place.length, at));
    if (read === 0) return;
    at += read;
    if (at > most) refuseLarge(path, most);
    yield place.subarray(0, read);
  }
}

/** What the system refuses, as a refusal; of a link that leads nowhere where it leads. */
function attempt<Result>(path: string, work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    const refusal = fileRefusal(path, error);
    const to = refusal.code === 'missing-file' ? linkedTo(path) : undefined;
    if (to === undefined) throw refusal;
    const wrong = `This link leads to “${to}”, where nothing is; mend it, or name the file itself.`;
    throw new InputError('missing-file', path, wrong);
  }
}

function linkedTo(path: string): string | undefined {
  try {
    return readlinkSync(path);
  } catch {
    return undefined;
  }
}

function refuseOther(path: string, there: Stats): never {
  const wrong = there.isDirectory()
    ? 'This is a folder; name a file in it.'
    : there.isFIFO()
      ? 'This is a pipe, which can be read once only; save what it gives in a file.'
      : 'This is no plain file but a device or a socket; name a file.';
  throw new InputError('not-a-file', path, wrong);
}

function refuseLarge(path: string, most: number): never {
  const wrong = `The file holds more than ${most} bytes, as many as are read; name a smaller one, or have more read.`;
  throw new InputError('file-too-large', path, wrong);
}
