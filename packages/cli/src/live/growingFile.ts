import { open } from 'node:fs/promises';
import { InputError } from '@truesweep/core';
import type { LiveSource } from './liveSource.js';
import { pause } from './pause.js';

const pieceBytes = 2 ** 16;
/** How often it is looked whether a file has grown, ms. */
const every = 50;

/** A file that another program writes: from its beginning, then whatever is added. One that becomes shorter was begun anew. */
export function growingFile(path: string): LiveSource {
  return async function* (stopped) {
    const file = await open(path, 'r').catch((error: NodeJS.ErrnoException) => {
      throw new InputError(
        'unreadable-file',
        path,
        `The system could not read the file (${error.code}); look at its name and its rights.`,
      );
    });
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
        if ((await file.stat()).size < at) {
          at = 0;
          yield { kind: 'lost' };
          continue;
        }
        await pause(every, stopped);
      }
    } finally {
      await file.close();
    }
  };
}
