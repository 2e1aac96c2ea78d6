import type { SoakAdvice } from '@truesweep/core';
import { say } from './say.js';

/** The entries of two sensors after a cold soak. */
export type SoakEntry =
  | 'oneOhms'
  | 'otherOhms'
  | 'otherLaw'
  | 'otherB'
  | 'otherAt25'
  | 'otherTolerance'
  | 'soakTemperature'
  | 'soakThermometer'
  | 'soakMeter';

/**
 * What each entry of a cold soak is called.
 *
 * @example
 * soakLabels.oneOhms // => 'Resistance of the first'
 */
export const soakLabels: Readonly<Record<SoakEntry, string>> = {
  oneOhms: 'Resistance of the first',
  otherOhms: 'Resistance of the other',
  otherLaw: 'The other is',
  otherB: 'B of the other, 25 to 85 °C',
  otherAt25: 'Resistance of the other at 25 °C',
  otherTolerance: 'Tolerance of the other',
  soakTemperature: 'A thermometer between them',
  soakThermometer: 'Uncertainty of the thermometer',
  soakMeter: 'Uncertainty of the ohmmeter',
};

/**
 * What each entry of a cold soak means, in one line.
 *
 * @example
 * soakHints.soakTemperature // => 'With its unit; leave empty if there is none: then nobody can say which is wrong.'
 */
export const soakHints: Readonly<Record<SoakEntry, string>> = {
  oneOhms: 'Such as the coolant sensor’s, unplugged, after hours in still shade.',
  otherOhms: 'Such as the intake air sensor’s, unplugged, within the same minute.',
  otherLaw: 'Coolant and air sensors often share a curve: the manual says whether.',
  otherB: 'Read only where the other has a curve of its own.',
  otherAt25: 'Where the other has a curve of its own: what its data sheet says of 25 °C.',
  otherTolerance: 'Of its resistance; read only where it has a curve of its own.',
  soakTemperature:
    'With its unit; leave empty if there is none: then nobody can say which is wrong.',
  soakThermometer: 'Standard uncertainty: half of the ± that it is good for.',
  soakMeter: 'Standard uncertainty as a part of the reading: half of the ± that it is good for.',
};

/**
 * What to do after a cold soak.
 *
 * @example
 * soakAdvice['replace-one'] // => 'The first is wrong: read it in ice and in boiling water before you replace it.'
 */
export const soakAdvice: Readonly<Record<SoakAdvice, string>> = {
  'read-elsewhere':
    'Both agree with the thermometer here, which passes neither: ice and boiling water tell of the rest.',
  'read-thermometer':
    'One of them is wrong, and these two cannot say which: read a thermometer between them.',
  'better-thermometer': 'The thermometer decides, and not the sensors: take a finer one.',
  'better-meter': 'The ohmmeter decides, and not the sensors: take a finer range or a better one.',
  'state-tolerances': 'Say how far a sound sensor may be off: without that nothing can be judged.',
  'replace-one': 'The first is wrong: read it in ice and in boiling water before you replace it.',
  'replace-other': 'The other is wrong: read it in ice and in boiling water before you replace it.',
};

/**
 * Words of a cold soak.
 *
 * @example
 * soakWords.shows('18.2 °C', '17.9 °C') // => 'The first shows 18.2 °C, the other 17.9 °C.'
 */
export const soakWords = {
  readings: 'After the soak',
  other: 'The other sensor, thermometer and meter',
  same: 'of the same curve',
  own: 'of a curve of its own',
  agree:
    'They agree as well as their tolerances let them. That alone passes neither: both may be off alike, or wrong far from here.',
  differ: 'They differ by more than their tolerances let them.',
  cannot: 'They differ by about as much as their tolerances let them.',
  fails: 'One of them is off what the thermometer shows.',
  pass: 'Both are as right as the thermometer here.',
  unsure: 'What they show cannot be told from the thermometer’s and the meter’s uncertainty.',
  shows: (one: string, other: string): string => say`The first shows ${one}, the other ${other}.`,
  checks: 'What they show beside each other',
  what: 'What',
  difference: 'The first less the other',
  one: 'The first less the thermometer',
  otherOne: 'The other less the thermometer',
  shown: 'Shown',
  limit: 'Tolerances allow',
  within: (limit: string): string => say`± ${limit}`,
  notIn: (lowest: string, highest: string): string =>
    say`No resistance of its curve; that has ${lowest} to ${highest}.`,
  caution:
    'Unplug both, and let the engine stand for a night: an hour is not enough, and the sun warms one side.',
} as const;
