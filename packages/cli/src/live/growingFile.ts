import { type FileHandle, open, stat } from 'node:fs/promises';
import { InputError } from '@truesweep/core';
import type { LiveSource } from './liveSource.js';
import { pause } from './pause.js';

const pieceBytes = 2 ** 16;
/** How often it is looked whether a file has grown, ms. */
const every = 50;

/** A file that another program writes: from its beginning, then whatever is added. One that becomes shorter, or is replaced by another of its name, was begun anew. */
export function growingFile(path: string): LiveSource {
  return async function* (stopped) {
    let file = await opened(path);
    try {
      const buffer = new Uint8Array(pieceBytes);
      let at = 0;
      while (!stopped.aborted) {
        const { bytesRead } = await file.read(buffer, 0, pieceBytes, at);
        if (bytesRead > 0) {
          at += bytesRead;
          yield { kind: 'bytes', bytes: buffer.subarray(0, bytesRead) };
          continue;
        }
        const { size, ino } = await file.stat();
        const there = await stat(path).catch(() => undefined);
        const isOther = there !== undefined && there.ino !== ino;
        if (isOther) {
          await file.close();
          file = await opened(path);
        }
        if (isOther || size < at) {
          at = 0;
          yield { kind: 'begun-anew' };
          continue;
        }
        await pause(every, stopped);
      }
    } finally {
      await file.close();
    }
  };
}

async function opened(path: string): Promise<FileHandle> {
  try {
    return await open(path, 'r');
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    throw new InputError(
      'unreadable-file',
      path,
      `The system could not read the file (${reason}); look at its name and its rights.`,
    );
  }
}
