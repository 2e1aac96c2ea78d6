import { checkText, formatQuantity, type Sampling } from '@truesweep/core';
import { say } from './say.js';

/**
 * Headings and short words of a report.
 *
 * @example
 * reportWords.conditions // => 'Conditions'
 */
export const reportWords = {
  title: 'Sweep report',
  readingsTitle: 'Report of readings',
  conditions: 'Conditions',
  workings: 'Appendix: how the numbers come about',
  sensor: 'Sensor',
  track: 'Track',
  wiperClosed: 'Wiper, throttle closed',
  wiperOpen: 'Wiper, throttle open',
  source: 'Source',
  limiter: 'Limiting resistor',
  pullDown: 'Deliberate load',
  instrument: 'Instrument',
  inputResistance: 'Input resistance',
  coupling: 'Input coupling',
  sampling: 'A sample is',
  closedWindow: 'Closed reading must lie in',
  openWindow: 'Open reading must lie in',
  restLevel: 'Reading with the wiper lifted',
  size: 'Size',
  hash: 'SHA-256',
  howRead: 'Read as',
  written: 'Written',
  notes: 'Notes',
  number: 'No.',
  hookUp: 'Hook-up and expected reading',
  trace: 'Recorded sweep',
  map: 'Where on the travel',
  meaning: 'What the findings are',
  examined: 'Examined by',
  date: 'Date',
  signature: 'Signature',
} as const satisfies Record<string, string>;

/**
 * What a report is filed by.
 *
 * @example
 * filingLabels.by // => 'Tested by'
 */
export const filingLabels: Readonly<
  Record<'jobNumber' | 'machine' | 'serial' | 'customer' | 'by' | 'at', string>
> = {
  jobNumber: 'Job number',
  machine: 'Machine',
  serial: 'Serial number',
  customer: 'Customer',
  by: 'Tested by',
  at: 'Tested on',
};

/**
 * A quantity with its tolerance.
 *
 * @param spread Half the width of the tolerance as a fraction; nothing where none is stated.
 *
 * @example
 * tolerancedText('5 kΩ', 0.2) // => '5 kΩ ± 20\u00a0%'
 */
export function tolerancedText(value: string, spread: number | undefined): string {
  checkText(value, 'value');
  return spread === undefined
    ? value
    : say`${value} ± ${formatQuantity(spread, '%', { trim: true })}`;
}

/**
 * Said below a table that lists the first of many findings.
 *
 * @example
 * restOfFindingsSentence(3) // => 'And 3 more, marked in the drawings.'
 */
export function restOfFindingsSentence(count: number): string {
  return say`And ${count} more, marked in the drawings.`;
}

/**
 * What became of a report's recording when the report was opened again.
 *
 * @param again The verdict now; nothing where the samples are not at hand.
 *
 * @example
 * recheckSentence('Fail', undefined) // => 'Fail; shown, not re-checked: the recording is not at hand.'
 */
export function recheckSentence(stated: string, again: string | undefined): string {
  if (again === undefined)
    return say`${stated}; shown, not re-checked: the recording is not at hand.`;
  if (again === stated) return say`${stated}; scored again with the same verdict.`;
  return say`The report says ${stated}, scored again it is ${again}: do not rely on the report.`;
}

/**
 * Said once a report is written.
 *
 * @example
 * writtenSentence('port.html') // => 'The report is in port.html.'
 */
export function writtenSentence(path: string): string {
  return say`The report is in ${path}.`;
}

/**
 * How a recorder's input is coupled.
 *
 * @example
 * couplingLabels.dc // => 'direct (DC)'
 */
export const couplingLabels: Readonly<Record<'dc' | 'ac', string>> = {
  dc: 'direct (DC)',
  ac: 'through a capacitor (AC)',
};

/**
 * How a recorder forms a sample.
 *
 * @example
 * samplingLabels.averaged // => 'the average over its interval'
 */
export const samplingLabels: Readonly<Record<Sampling, string>> = {
  picked: 'picked at a moment',
  averaged: 'the average over its interval',
  'peak-kept': 'the extreme of its interval',
  interpolated: 'drawn between fewer',
};
