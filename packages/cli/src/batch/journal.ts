import { closeSync, fsyncSync, ftruncateSync, openSync, readSync } from 'node:fs';
import { InputError } from '@truesweep/core';
import type { RecordingResult } from '@truesweep/jobs/node';
import { journalSentence, visibleText } from '@truesweep/wording';
import { appendLines } from '../appendLines.js';

/** The results of a batch in the order in which they came, a line of JSON each: what one that was stopped goes on from. */
export interface Journal {
  /** Adds a result, or takes the one that the journal has as it is. It is the system's at once, so that the program may end at any moment. */
  add(result: RecordingResult): void;
  /** A judged recording of this key, or what was refused of this very file. */
  find(key: string, file: string): RecordingResult | undefined;
  /** The results of this run, by the names of their files. */
  inOrder(): Generator<RecordingResult>;
  /** How many results this run has. */
  size(): number;
  /** Sees to it that all is on the disk. */
  close(): void;
}

/** Where a line stands, bytes. */
interface Place {
  readonly at: number;
  readonly length: number;
}

/** So much is read at a time, bytes. */
const pieceBytes = 2 ** 20;
const lineEnd = 10;

/**
 * Opens the journal of a batch; of one that was stopped in the middle of a line that line is cut off.
 *
 * @throws InputError `cannot-write`, here or later, with what is kept.
 */
export function openJournal(path: string): Journal {
  const file = attempt(path, 0, () => openSync(path, 'a+'));
  /** The latest place of each file, and a place of each key. */
  const files = new Map<string, Place>();
  const keys = new Map<string, Place>();
  const thisRun = new Set<string>();
  const add = appendLines(file);
  let size = 0;

  const note = ({ file: name, ...result }: RecordingResult, place: Place): void => {
    files.set(name, place);
    if (result.key !== undefined && 'verdict' in result) keys.set(result.key, place);
  };
  const resultAt = ({ at, length }: Place): RecordingResult => {
    const bytes = Buffer.alloc(length);
    for (let read = 0; read < length; ) {
      const more = readSync(file, bytes, read, length - read, at + read);
      if (more === 0)
        throw new InputError('cannot-write', path, journalSentence('EIO', files.size));
      read += more;
    }
    return JSON.parse(bytes.toString()) as RecordingResult;
  };
  const append = (result: RecordingResult): void => {
    const bytes = Buffer.from(`${visibleText(JSON.stringify(result))}\n`);
    attempt(path, thisRun.size, () => add(bytes, size));
    note(result, { at: size, length: bytes.length });
    size += bytes.length;
  };

  for (const { line, at } of linesOf(file)) {
    size = at + line.length;
    const result = resultOf(line);
    if (result) note(result, { at, length: line.length });
  }
  attempt(path, files.size, () => ftruncateSync(file, size));

  return {
    add(result) {
      const before = files.get(result.file);
      if (!before || !isSame(resultAt(before), result)) append(result);
      thisRun.add(result.file);
    },
    find(key, name) {
      const place = keys.get(key);
      if (place) return resultAt(place);
      const own = files.get(name);
      const result = own && resultAt(own);
      return result?.key === key ? result : undefined;
    },
    *inOrder() {
      for (const name of [...thisRun].sort()) yield resultAt(files.get(name)!);
    },
    size: () => thisRun.size,
    close() {
      attempt(path, thisRun.size, () => fsyncSync(file));
      closeSync(file);
    },
  };
}

/** Whole lines with their ends; what stands behind the last end is none. */
function* linesOf(file: number): Generator<{ readonly line: Buffer; readonly at: number }> {
  let held = Buffer.alloc(0);
  let at = 0;
  for (;;) {
    const piece = Buffer.alloc(pieceBytes);
    const read = readSync(file, piece, 0, pieceBytes, at + held.length);
    if (read === 0) return;
    held = Buffer.concat([held, piece.subarray(0, read)]);
    let from = 0;
    for (let end = held.indexOf(lineEnd); end >= 0; end = held.indexOf(lineEnd, from)) {
      yield { line: held.subarray(from, end + 1), at: at + from };
      from = end + 1;
    }
    held = held.subarray(from);
    at += from;
  }
}

/** The result in a line; nothing where it is damaged, so that its recording is judged again. */
function resultOf(line: Buffer): RecordingResult | undefined {
  try {
    const result: unknown = JSON.parse(line.toString());
    const isOne =
      typeof result === 'object' &&
      result !== null &&
      'file' in result &&
      typeof result.file === 'string' &&
      ('verdict' in result || 'refused' in result);
    return isOne ? (result as RecordingResult) : undefined;
  } catch {
    return undefined;
  }
}

/** Whether they tell the same, whenever it was found. */
function isSame(one: RecordingResult, other: RecordingResult): boolean {
  const told = ({ judgedAt: _, ...rest }: RecordingResult) => JSON.stringify(rest);
  return told(one) === told(other);
}

function attempt<Result>(path: string, kept: number, work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    throw refusal(path, error, kept);
  }
}

function refusal(path: string, error: unknown, kept: number): InputError {
  const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error);
  return new InputError('cannot-write', path, journalSentence(reason, kept));
}
