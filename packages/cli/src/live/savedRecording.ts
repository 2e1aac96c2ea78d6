import { closeSync, openSync } from 'node:fs';
import { InputError } from '@truesweep/core';
import { cannotSaveSentence } from '@truesweep/wording';
import { appendLines } from '../appendLines.js';

/** A recording's file while it grows: only whole lines stand in it. */
export interface SavedRecording {
  /** Adds whole lines; they are the system's at once, so that this program may end at any moment. */
  append(text: string): void;
  close(): void;
  /** Bytes so far. */
  size(): number;
}

/**
 * Begins a recording's file.
 *
 * @throws InputError `file-exists` or `cannot-write`, here or later, with what is saved so far.
 */
export function savedRecording(path: string): SavedRecording {
  const file = attempt(path, () => openSync(path, 'wx'));
  const add = appendLines(file);
  let size = 0;
  return {
    append(text) {
      const bytes = Buffer.from(text);
      attempt(path, () => add(bytes, size), size);
      size += bytes.length;
    },
    close: () => closeSync(file),
    size: () => size,
  };
}

function attempt<Result>(path: string, work: () => Result, saved = 0): Result {
  try {
    return work();
  } catch (error) {
    throw refusal(path, error, saved);
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
