import { InputError } from '@truesweep/core';
import { notASizeSentence, notATimeSentence, notAWholeSentence } from '../queueWords.js';

const units: Readonly<Record<string, number>> = { ms: 0.001, s: 1, min: 60, h: 3600 };
const sizes: Readonly<Record<string, number>> = { KB: 2 ** 10, MB: 2 ** 20, GB: 2 ** 30 };

/** A length of time as it is written, such as `30 s`, s. */
export function secondsOf(text: string, option: string): number {
  const [, number, unit = ''] = /^(\d+(?:\.\d+)?)\s*(ms|s|min|h)$/.exec(text.trim()) ?? [];
  const seconds = Number(number) * (units[unit] ?? Number.NaN);
  if (seconds > 0 && seconds <= 14 * 86_400) return seconds;
  throw new InputError('not-a-quantity', option, notATimeSentence(text));
}

/** A size as it is written, such as `1 GB` of 2³⁰ bytes, bytes. */
export function bytesOf(text: string, option: string): number {
  const [, number, unit = ''] = /^(\d+(?:\.\d+)?)\s*(KB|MB|GB)$/i.exec(text.trim()) ?? [];
  const bytes = Math.floor(Number(number) * (sizes[unit.toUpperCase()] ?? Number.NaN));
  if (bytes > 0 && Number.isSafeInteger(bytes)) return bytes;
  throw new InputError('not-a-quantity', option, notASizeSentence(text));
}

/** A whole number within bounds. */
export function wholeOf(text: string, option: string, least: number, most: number): number {
  const number = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
  if (number >= least && number <= most) return number;
  throw new InputError('not-a-count', option, notAWholeSentence(text, least, most));
}
