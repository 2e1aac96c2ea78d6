import type { CheckOutcome } from '@truesweep/core';
import { outcomeLabels } from './checks.js';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * Words in drawings of single readings and held stretches.
 *
 * @example
 * bandWords.limits // => 'limits'
 */
export const bandWords = {
  thermistorBand: 'Resistance over temperature between its limits',
  pressureBand: 'Signal over pressure between its limits',
  steps: 'Held stretches of the recording',
  limits: 'limits',
  nominal: 'nominal',
  resistance: 'Resistance',
  temperature: 'Temperature',
  pressure: 'Pressure',
  absolute: 'absolute',
  gauge: 'gauge',
  ratio: 'Ratio to the supply',
  noConnection: 'no connection',
} as const satisfies Record<string, string>;

/** A reading, or a held stretch, as a drawing tells it; every quantity written with its unit. */
export interface DrawnOutcome {
  /** What was read. */
  readonly value: string;
  /** At which place of the axis; left out where it has none. */
  readonly at?: string;
  /** What came of it, as a code. */
  readonly outcome: CheckOutcome;
}

/**
 * A band of limits over an axis with the readings in it, in a sentence or more; every quantity written with its unit.
 *
 * @param band Its ends on the axis, the nominal values there, and the readings in order.
 *
 * @example
 * const ends = { from: '0 °C', to: '100 °C', first: '5.98 kΩ', last: '176 Ω' };
 * bandSentence({ ...ends, readings: [] }) // => 'From 0 °C to 100 °C it goes from 5.98 kΩ to 176 Ω. No reading is drawn.'
 * const readings = [{ value: '2.51 kΩ', at: '20 °C', outcome: 'conforms' }];
 * bandSentence({ ...ends, readings }).endsWith('. Reading 1: 2.51 kΩ at 20 °C, conforms.') // => true
 */
export function bandSentence(band: {
  readonly from: string;
  readonly to: string;
  readonly first: string;
  readonly last: string;
  readonly readings: readonly DrawnOutcome[];
}): string {
  return whole(band, 'band', () => {
    const { from, to, first, last, readings } = band;
    const read = numberedOutcomes('Reading', readings);
    return say`From ${from} to ${to} it goes from ${first} to ${last}. ${read || 'No reading is drawn.'}`;
  });
}

/**
 * A recording with held stretches, in a sentence or more; every quantity written with its unit.
 *
 * @example
 * const trace = { seconds: '40 s', low: '1.8 V', high: '4.08 V' };
 * stepsSentence({ ...trace, stretches: [] }) // => '40 s of signal between 1.8 V and 4.08 V. No held stretch is marked.'
 * const stretches = [{ value: '4.08 V', outcome: 'cannot-tell' }];
 * stepsSentence({ ...trace, stretches }).endsWith('. Stretch 1: 4.08 V, cannot tell.') // => true
 */
export function stepsSentence(steps: {
  readonly seconds: string;
  readonly low: string;
  readonly high: string;
  readonly stretches: readonly DrawnOutcome[];
}): string {
  return whole(steps, 'steps', () => {
    const { seconds, low, high, stretches } = steps;
    const held = numberedOutcomes('Stretch', stretches);
    return say`${seconds} of signal between ${low} and ${high}. ${held || 'No held stretch is marked.'}`;
  });
}

function numberedOutcomes(name: string, outcomes: readonly DrawnOutcome[]): string {
  return outcomes
    .map(({ value, at, outcome }, i) => {
      const place = at === undefined ? '' : say` at ${at}`;
      return say`${name} ${i + 1}: ${value}${place}, ${outcomeLabels[outcome]}.`;
    })
    .join(' ');
}
