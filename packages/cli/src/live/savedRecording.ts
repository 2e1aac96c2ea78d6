import { closeSync, fsync, ftruncateSync, openSync, writeSync } from 'node:fs';
import { InputError } from '@truesweep/core';
import { cannotSaveSentence } from '@truesweep/wording';

/** A recording's file while it grows: only whole lines stand in it. */
export interface SavedRecording {
  /** Adds whole lines; they are the system's at once, so that this program may end at any moment. */
  append(text: string): void;
  close(): void;
  /** Bytes so far. */
  size(): number;
}

/** So much may be lost where the machine itself stops: what came in this time, ms. */
const toDiskEvery = 1000;

/**
 * Begins a recording's file.
 *
 * @throws InputError `file-exists` or `cannot-write`, here or later, with what is saved so far.
 */
export function savedRecording(path: string): SavedRecording {
  const file = attempt(path, () => openSync(path, 'wx'));
  let size = 0;
  let isBusy = false;
  let synced = performance.now();
  const toDisk = (): void => {
    if (isBusy || performance.now() - synced < toDiskEvery) return;
    isBusy = true;
    fsync(file, () => {
      isBusy = false;
      synced = performance.now();
    });
  };
  return {
    append(text) {
      const bytes = Buffer.from(text);
      try {
        for (let from = 0; from < bytes.length; ) from += writeSync(file, bytes, from);
      } catch (error) {
        // A full disk takes a part of a line.
        ftruncateSync(file, size);
        throw refusal(path, error, size);
      }
      size += bytes.length;
      toDisk();
    },
    close: () => closeSync(file),
    size: () => size,
  };
}

function attempt<Result>(path: string, work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    throw refusal(path, error, 0);
  }
}

function refusal(path: string, error: unknown, saved: number): InputError {
  const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error);
  return new InputError(
    reason === 'EEXIST' ? 'file-exists' : 'cannot-write',
    path,
    cannotSaveSentence(reason, saved),
  );
}
