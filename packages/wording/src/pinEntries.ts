import type { Stop } from '@truesweep/core';
import { say } from './say.js';

/**
 * Headings of the form that finds the terminals.
 *
 * @example
 * pinWords.further('D') // => 'A further terminal, D'
 */
export const pinWords = {
  three: 'Ohmmeter between terminals A, B and C',
  further: (terminal: string): string => say`A further terminal, ${terminal}`,
  meter: 'The ohmmeter',
  error: "Ohmmeter's error, ±",
  leads: "Ohmmeter's leads and counts, ±",
  errorHint: 'Part of the reading; from its data sheet.',
  noReadings:
    'No reading yet. Enter what your ohmmeter shows; what stands pale in the fields is an example.',
  leadsHint: 'What it shows with its tips held together, and its last digit.',
} as const;

/**
 * What a reading between two terminals is called.
 *
 * @example
 * pairLabel('A', 'C', 'open') // => 'A to C, throttle open'
 */
export function pairLabel(a: string, b: string, at: Stop): string {
  return say`${a} to ${b}, throttle ${at}`;
}

/**
 * What a reading between two terminals means, in one line.
 *
 * @example
 * pairHint // => 'Sensor unplugged; write OL or open where the meter shows over-range.'
 */
export const pairHint: string =
  'Sensor unplugged; write OL or open where the meter shows over-range.';

/**
 * The table of what was found about a track.
 *
 * @example
 * pinTableWords.closed // => 'Wiper with the throttle closed'
 */
export const pinTableWords = {
  caption: 'The track in numbers, with the error of the ohmmeter',
  what: 'What',
  lowest: 'Lowest',
  likeliest: 'Likeliest',
  highest: 'Highest',
  track: 'Track resistance',
  series: "Between track and wiper's pin",
  closed: 'Wiper with the throttle closed',
  open: 'Wiper with the throttle open',
} as const satisfies Record<string, string>;
