import { checkText, type Finding } from '@truesweep/core';
import { duringLabels, findingLabels } from './findings.js';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * Words of looking into a recording before it is judged, and of the answer's three parts.
 *
 * @example
 * judgeWords.why // => 'Why'
 */
export const judgeWords = {
  read: 'What was read',
  firstLines: 'First lines of the file',
  otherwise: 'Read it otherwise',
  timeColumn: 'Column of the times',
  signalColumn: 'Column of the readings',
  supplyColumn: 'Column of the supply',
  noSupply: 'none: not recorded',
  timeUnit: 'Times are in',
  signalUnit: 'Readings are in',
  asFound: 'as found in the file',
  noTimes: 'no times: a fixed rate',
  rate: 'Samples per second',
  bits: 'Bits of the counts',
  fullScale: 'Full scale, V',
  soundFullScale: 'A full-scale sample stands for, V',
  attenuation: 'Signal divided by',
  microphoneOff: 'The microphone bias of this input is off',
  sensor: 'Which sensor is it?',
  fromShelf: 'From the shelf',
  entered: 'entered below',
  keep: 'Keep this sensor on the shelf',
  keptNow: 'Kept on the shelf.',
  resultKept: 'This result is kept with the sensor on the shelf.',
  judge: 'Judge with this sensor',
  why: 'Why',
  where: 'Where',
  next: 'What next',
  nowhere: 'No finding.',
  record: 'For the record',
  withWorking: 'With an appendix: how the numbers come about',
  keepReport: 'Keep the report',
  shareReport: 'Share the report',
  saveJob: 'Save the job',
  printLabel: 'Print a label',
  label: 'Label for the sensor',
  opensEntries: 'opens the entries',
  evidence: 'Look closer: findings, checks and how it was read',
} as const satisfies Record<string, string>;

/**
 * Units that can be told of a recording's columns.
 *
 * @example
 * readingUnitLabels.counts // => 'counts of a converter'
 */
export const readingUnitLabels: Readonly<Record<'V' | 'mV' | 'counts' | '%', string>> = {
  V: 'V',
  mV: 'mV',
  counts: 'counts of a converter',
  '%': '% of full scale',
};

/**
 * A column as it is offered: its number, and its heading where it has one.
 *
 * @example
 * columnChoice(2, 'Signal (V)') // => '2 “Signal (V)”'
 */
export function columnChoice(number: number, heading: string): string {
  return heading === '' ? say`${number}` : say`${number} “${heading}”`;
}

/**
 * How much a recording holds; every quantity written with its unit.
 *
 * @param extent The rate is left out where the recording has one time only.
 *
 * @example
 * const extent = { samples: '12001', seconds: '12 s', rate: '1 kHz', low: '410 mV', high: '3.75 V' };
 * extentSentence(extent) // => '12001 samples over 12 s, 1 kHz; readings from 410 mV to 3.75 V.'
 */
export function extentSentence(extent: {
  readonly samples: string;
  readonly seconds: string;
  readonly rate?: string;
  readonly low: string;
  readonly high: string;
}): string {
  return whole(extent, 'extent', () => {
    const { samples, seconds, rate, low, high } = extent;
    const fast = rate === undefined ? '' : say`, ${rate}`;
    return say`${samples} samples over ${seconds}${fast}; readings from ${low} to ${high}.`;
  });
}

/**
 * Asked of a sound recording before it can be read.
 *
 * @example
 * soundAsksSentence.includes('full scale') // => true
 */
export const soundAsksSentence: string =
  'This is a sound recording, which tells no voltages: say below what its full scale is, and that no microphone bias was on.';

/**
 * Where a finding lies, so that one can go and look; every quantity written with its unit.
 *
 * @param finding Its travel is left out where the readings tell no place.
 *
 * @example
 * const finding = { number: '1', kind: 'dropout', during: 'opening', at: '3.21 s', depth: '45 %', travel: '38 %' } as const;
 * findingPlaceSentence(finding) // => 'Finding 1: dropout at 38 % of the travel, opening, at 3.21 s, by 45 % of the span.'
 */
export function findingPlaceSentence(finding: {
  readonly number: string;
  readonly kind: Finding['kind'];
  readonly during: Finding['during'];
  readonly at: string;
  readonly depth: string;
  readonly travel?: string;
}): string {
  return whole(finding, 'finding', () => {
    const { number, kind, during, at, depth, travel } = finding;
    const place = travel === undefined ? 'no place that is told' : say`${travel} of the travel`;
    return say`Finding ${number}: ${findingLabels[kind]} at ${place}, ${duringLabels[during]}, at ${at}, by ${depth} of the span.`;
  });
}

/**
 * Asks to enter what a verdict would rest on, or to take it from the shelf.
 *
 * @example
 * waitsForSensorSentence.startsWith('No verdict yet') // => true
 */
export const waitsForSensorSentence: string =
  'No verdict yet: say which sensor and hook-up this is. Take it from the shelf, or enter it and say that it is yours.';

/** What a file may be that holds no recording. */
export type ForeignKind =
  | 'spreadsheet'
  | 'picture'
  | 'document'
  | 'packed'
  | 'film'
  | 'compressed-sound'
  | 'empty';

const foreignWords: Readonly<Record<ForeignKind, string>> = {
  spreadsheet: 'a spreadsheet. Open it in its program, save the sheet as CSV, and choose that.',
  picture:
    'a picture. A sweep is judged by its samples: save the recording itself, as CSV, on the scope or logger.',
  document:
    'a document. Save the recording itself, as CSV, on the scope or logger, and choose that.',
  packed: 'packed. Unpack it and choose the recording that is in it.',
  film: 'a film. Save the recording itself, as CSV, on the scope or logger.',
  'compressed-sound':
    'a compressed sound, which has lost what a fault looks like. Record uncompressed, as WAV, and choose that.',
  empty: 'empty. Save the recording again, and see that it has lines in it.',
};

/**
 * Said of a file that holds no recording: what it is, and what to do.
 *
 * @example
 * foreignFileSentence('scope.png', 'picture').startsWith('“scope.png” is a picture.') // => true
 */
export function foreignFileSentence(name: string, kind: ForeignKind): string {
  checkText(kind, 'kind');
  return say`“${name}” is ${foreignWords[kind]}`;
}
