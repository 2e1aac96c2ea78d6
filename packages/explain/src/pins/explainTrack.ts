import { checkFields, InputError, type Ohms } from '@truesweep/core';
import { workingRules as rules, trackWorkingWords as words } from '@truesweep/wording/working';
import { difference, quotient, sum } from '../expression.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { workOut } from '../workOut.js';

/** An ohmmeter's readings of a potentiometer whose wiper stands still, Ω, each 0 or more. */
export interface TrackReadings {
  /** Between the two ends of the track. */
  readonly ends: Ohms;
  /** From the end that is near the wiper when the throttle is closed to the wiper. */
  readonly toWiper: Ohms;
  /** From the wiper to the other end. */
  readonly fromWiper: Ohms;
}

const readingRules = { ends: someOhms, toWiper: someOhms, fromWiper: someOhms };

function someOhms(value: unknown, path: string): void {
  if (Number.isFinite(value) && (value as number) >= 0 && (value as number) <= 1e18) return;
  const code = value === undefined ? 'missing' : 'out-of-range';
  throw new InputError(code, path, `${path} is none; it must be from 0 to 1e18 Ω.`);
}

/**
 * What an ohmmeter's three readings of a potentiometer say: what lies in the wiper's way beside the track, and where the wiper stands.
 *
 * @param readings The readings, Ω.
 * @param at Where the throttle was held, for the title; not told when left out.
 * @returns The answer is the wiper's place, a fraction of the track from the first end.
 * @throws InputError at `readings…`; `no-working` for ends without resistance.
 *
 * @example
 * explainTrack({ ends: 5000, toWiper: 1000, fromWiper: 4600 }).answer.value // => ≈ 0.14
 */
export function explainTrack(readings: TrackReadings, at?: 'closed' | 'open'): Working {
  checkFields(readings, 'readings', readingRules);
  const { ends, toWiper, fromWiper } = readings;
  if (ends === 0) refuseWorking('readings.ends', 'is 0 Ω');
  if (at !== undefined && at !== 'closed' && at !== 'open')
    throw new InputError('not-one-of', 'at', 'at is none; it must be closed or open.');
  return workOut(at === undefined ? words.title : words.titleAt[at], (sheet) => {
    const given = [
      ['R_ab', ends],
      ['R_aw', toWiper],
      ['R_wb', fromWiper],
    ] as const;
    for (const [symbol, value] of given)
      sheet.give({ symbol, meaning: words.given[symbol], value, unit: 'Ω' });
    sheet.find({
      symbol: 'R_c',
      meaning: words.contact,
      unit: 'Ω',
      formula: quotient(difference(sum('R_aw', 'R_wb'), 'R_ab'), 2),
      rule: rules.series,
    });
    sheet.find({
      symbol: 'x',
      meaning: words.place,
      unit: '%',
      formula: quotient(difference('R_aw', 'R_c'), 'R_ab'),
      rule: rules.series,
    });
    return sheet.value('R_c') < 0 ? { conclusion: words.scatter } : {};
  });
}
