import { InputError } from '@truesweep/core';
import {
  noJobSentence,
  notASizeSentence,
  tooLargeSentence,
  usualLargest,
  waitingSentence,
} from '@truesweep/wording';
import { errorLine } from './errorLine.js';
import type { Output } from './terminal.js';

/** How an input is read: what it is, how large it may be, and whom to tell that it doesn't come. */
export interface InputBounds {
  /** What is read, for people. */
  readonly what: 'a recording' | 'a job' | 'a report';
  /** Bytes. */
  readonly largest: number;
  /** What is said of a larger one; of so many bytes, or at least so many. */
  readonly tooLarge: (bytes: number) => string;
  /** Told where the input gives nothing for a while, with its name. */
  readonly onWaiting: (where: string) => void;
}

/** No job is larger, bytes. */
const largestJob = 2 ** 24;

/** How a job is read. */
export function jobBounds(output: Output): InputBounds {
  return { ...inputBounds(output, 'a job'), largest: largestJob, tooLarge: () => noJobSentence };
}

/**
 * How a recording or a report is read.
 *
 * @param largest The size as it was typed, such as 4 GB; the usual one when left out.
 */
export function inputBounds(
  output: Output,
  what: InputBounds['what'],
  largest?: string,
): InputBounds {
  const most = largest === undefined ? usualLargest : sizeOf(largest);
  return {
    what,
    largest: most,
    tooLarge: (bytes) => tooLargeSentence(writtenSize(most), writtenSize(bytes)),
    onWaiting: (where) => output.printError(errorLine(waitingSentence(what, where))),
  };
}

const powers: Readonly<Record<string, number>> = { k: 2 ** 10, m: 2 ** 20, g: 2 ** 30 };

/** A size as it is typed: KB, MB and GB of 2¹⁰, 2²⁰ and 2³⁰ bytes. */
function sizeOf(text: string): number {
  const [, number = '', unit = ''] = /^\s*(\d+(?:\.\d+)?)\s*([kmg])i?b\s*$/i.exec(text) ?? [];
  const bytes = Math.round(Number(number) * (powers[unit.toLowerCase()] ?? 0));
  if (bytes >= 1 && Number.isSafeInteger(bytes)) return bytes;
  throw new InputError('not-a-quantity', '--largest', notASizeSentence(text));
}

/** A size as it is read by {@link sizeOf}, rounded up. */
function writtenSize(bytes: number): string {
  const [unit, power] =
    bytes >= 2 ** 30 ? ['GB', 2 ** 30] : bytes >= 2 ** 20 ? ['MB', 2 ** 20] : ['KB', 2 ** 10];
  return `${Math.ceil((bytes / (power as number)) * 100) / 100} ${unit}`;
}
