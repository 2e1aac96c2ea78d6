import { closeSync, constants, createReadStream, openSync } from 'node:fs';
import type { LiveSource } from './liveSource.js';

/** Little is read ahead: what was read is lost where this program is killed, what stands in the pipe is not. */
const pieceBytes = 4096;

/** What another program prints: the standard input, or a named pipe. It ends with the program. */
export function programOutput(path?: string): LiveSource {
  return async function* (stopped) {
    const stream =
      path === undefined ? process.stdin : createReadStream(path, { highWaterMark: pieceBytes });
    const end = (): void => {
      stream.destroy();
      if (path !== undefined) letOpen(path);
    };
    stopped.addEventListener('abort', end, { once: true });
    try {
      for await (const bytes of stream) yield { kind: 'bytes', bytes: bytes as Uint8Array };
    } catch (error) {
      if (!stopped.aborted) throw error;
    } finally {
      stopped.removeEventListener('abort', end);
    }
  };
}

/** A named pipe that nobody writes to is waited for in the system, out of which only somebody leads who opens its other end. */
function letOpen(path: string): void {
  try {
    closeSync(openSync(path, constants.O_RDWR | constants.O_NONBLOCK));
  } catch {
    // It is gone, and nobody waits for it.
  }
}
