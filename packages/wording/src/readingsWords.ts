import type { ToleranceName } from '@truesweep/core';
import { say } from './say.js';
import { whole } from './whole.js';

/** The entries of a hook-up. */
export type HookUpEntry =
  | 'source'
  | 'limiter'
  | 'track'
  | 'input'
  | 'closedPosition'
  | 'openPosition'
  | 'sourceTolerance'
  | 'limiterTolerance'
  | 'trackTolerance'
  | 'positionTolerance'
  | 'supplyLead'
  | 'groundLead'
  | 'contact'
  | 'pullUp'
  | 'pullUpVolts';

/**
 * What each entry of a hook-up is called.
 *
 * @example
 * entryLabels.track // => 'Track resistance'
 */
export const entryLabels: Readonly<Record<HookUpEntry, string>> = {
  source: 'Source voltage',
  limiter: 'Limiting resistor',
  track: 'Track resistance',
  input: "Instrument's input resistance",
  closedPosition: 'Wiper with the throttle closed',
  openPosition: 'Wiper with the throttle open',
  sourceTolerance: 'Source voltage, ±',
  limiterTolerance: 'Limiting resistor, ±',
  trackTolerance: 'Track resistance, ±',
  positionTolerance: 'Wiper at the stops, ±',
  supplyLead: 'Supply lead',
  groundLead: 'Ground lead',
  contact: "Wiper's contact",
  pullUp: 'Pull-up resistor',
  pullUpVolts: 'Pull-up voltage',
};

/**
 * What each entry of a hook-up means, in one line.
 *
 * @example
 * entryHints.track // => 'Between the two end terminals, with the sensor unplugged.'
 */
export const entryHints: Readonly<Record<HookUpEntry, string>> = {
  source: 'What the bench supply gives, measured at its terminals.',
  limiter: 'In series between the supply and the sensor.',
  track: 'Between the two end terminals, with the sensor unplugged.',
  input: 'From the data of the meter, scope or logger at the wiper.',
  closedPosition: 'How far up the track the wiper stands at the closed stop.',
  openPosition: 'How far up the track the wiper stands at the open stop.',
  sourceTolerance: 'How far the source may be off, either way.',
  limiterTolerance: "The resistor's tolerance, as its colour code says.",
  trackTolerance: 'How far a sound track may be off; often stated as 20 %.',
  positionTolerance: 'How far the wiper may be off, in percent of the track.',
  supplyLead: 'From the limiting resistor to the sensor, with its clips.',
  groundLead: 'From the sensor back to the supply, with its clips.',
  contact: 'Between the wiper and the track; near 0 Ω where it is clean.',
  pullUp: 'From the signal up to a voltage; leave empty for none.',
  pullUpVolts: 'What the pull-up resistor is tied to.',
};

/**
 * Headings and captions of the expected readings.
 *
 * @example
 * readingsWords.windows // => 'Windows for the readings of a sound sensor'
 */
export const readingsWords = {
  parts: 'Parts of the hook-up',
  tolerances: 'How far a sound part may be off',
  furtherParts: 'Leads, contact and pull-up',
  windows: 'Windows for the readings of a sound sensor',
  curve: 'Nominal reading over travel',
  currents: 'Current in each part',
  throttle: 'Throttle',
  part: 'Part',
  travel: 'Travel',
  reading: 'Reading',
  lowest: 'Lowest',
  nominal: 'Nominal',
  highest: 'Highest',
  closed: 'Closed',
  open: 'Open',
  instrument: "Instrument's input",
  band: 'What makes up the band: standard uncertainty that each part adds to the reading',
  together: 'All together (root of the sum of squares)',
  noLimiter:
    'Never feed a sensor without a limiting resistor: with 0 Ω this is for comparison only.',
} as const;

/**
 * Parts whose tolerances make up the band of a reading.
 *
 * @example
 * bandPartLabels.closedPosition // => 'Wiper at the closed stop'
 */
export const bandPartLabels: Readonly<Record<ToleranceName, string>> = {
  source: 'Source voltage',
  limiter: 'Limiting resistor',
  track: 'Track resistance',
  bottomResidual: 'Residual resistance at the bottom end',
  topResidual: 'Residual resistance at the top end',
  contact: "Wiper's contact",
  pullDown: "Instrument's input resistance",
  pullUp: 'Pull-up resistor',
  pullUpVolts: 'Pull-up voltage',
  closedPosition: 'Wiper at the closed stop',
  openPosition: 'Wiper at the open stop',
};

/** What {@link readingsSentence} is made from; every quantity written with its unit. */
export interface ReadingsFacts {
  /** The window of the closed stop. */
  readonly closed: { readonly low: string; readonly high: string };
  /** The window of the open stop. */
  readonly open: { readonly low: string; readonly high: string };
  /** The source's voltage. */
  readonly source: string;
  /** The open reading straight from the source, with no limiting resistor and no load. */
  readonly straight: string;
  /** The open reading on this hook-up. */
  readonly nominal: string;
}

/**
 * What a sound sensor reads on a hook-up, in plain words.
 *
 * @example
 * readingsSentence({
 *   closed: { low: '330 mV', high: '505 mV' },
 *   open: { low: '3.55 V', high: '3.93 V' },
 *   source: '5 V',
 *   straight: '4.5 V',
 *   nominal: '3.75 V',
 * }).startsWith('A sound sensor reads 330 mV to 505 mV with the throttle closed') // => true
 */
export function readingsSentence(facts: ReadingsFacts): string {
  return whole(facts, 'facts', () => {
    const { closed, open, source, straight, nominal } = facts;
    const windows =
      say`A sound sensor reads ${closed.low} to ${closed.high} with the throttle closed ` +
      say`and ${open.low} to ${open.high} with it open.`;
    if (straight === nominal) return windows;
    return (
      say`${windows} Straight from ${source}, as a service manual states it, the open reading would be ${straight}; ` +
      say`on this hook-up it is ${nominal}.`
    );
  });
}
