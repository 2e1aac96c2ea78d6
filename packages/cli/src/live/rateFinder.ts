import type { Seconds } from '@truesweep/core';
import { type DelimitedOptions, liveReader } from '@truesweep/recordings';

/** The rates of serial lines that are tried, baud, the likeliest first. */
export const usualRates: readonly number[] = [
  115_200, 500_000, 250_000, 57_600, 9600, 230_400, 1_000_000, 921_600, 460_800, 38_400, 19_200,
  2_000_000,
];

/** So many rows at a rate are no chance. */
const enoughRows = 12;
/** So many bytes tell whether they are text at all. */
const tellingBytes = 64;
/** A recorder that writes slowly is listened to for so long at each rate: s. */
const patience: Seconds = 2;
/** Of a text's bytes so many are printable; of what is read at a wrong rate about a third. */
const textPart = 0.9;

/** Whether a rate is right: what came at it parses, doesn't, or not enough came yet. */
export type RateVerdict = 'right' | 'wrong' | 'waiting';

/**
 * Tells whether the bytes that come at a rate are lines of a recorder.
 *
 * @param began When the rate was set, s.
 */
export function rateFinder(
  options: DelimitedOptions,
  began: Seconds,
): (bytes: Uint8Array, now: Seconds) => RateVerdict {
  const reader = liveReader(options, true);
  let all = 0;
  let printable = 0;
  return (bytes, now) => {
    all += bytes.length;
    for (const byte of bytes) if (isPrintable(byte)) printable += 1;
    if (all >= tellingBytes && printable < textPart * all) return 'wrong';
    reader.feed(bytes);
    const { rows, damagedLines } = reader.reading();
    if (rows >= enoughRows && rows > damagedLines) return 'right';
    return now - began > patience ? 'wrong' : 'waiting';
  };
}

function isPrintable(byte: number): boolean {
  return (byte >= 0x20 && byte < 0x7f) || byte === 0x0a || byte === 0x0d || byte === 0x09;
}
