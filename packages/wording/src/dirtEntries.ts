import type { BenchLoadWay, NoBenchLoad } from '@truesweep/core';
import { say } from './say.js';

/** The entries for making dirt visible, besides those of the hook-up. */
export type DirtEntry = 'dirtTravel' | 'dirt' | 'visibleChange' | 'wiperLimit' | 'loadingLimit';

/**
 * What each entry for making dirt visible is called.
 *
 * @example
 * dirtLabels.dirt // => 'Resistance of the dirt'
 */
export const dirtLabels: Readonly<Record<DirtEntry, string>> = {
  dirtTravel: 'Where the dirt is',
  dirt: 'Resistance of the dirt',
  visibleChange: 'Change that you can see',
  wiperLimit: "Wiper's largest current",
  loadingLimit: 'Largest bend of the curve',
};

/**
 * What each entry for making dirt visible means, in one line.
 *
 * @example
 * dirtHints.visibleChange // => 'Well above the noise of your trace.'
 */
export const dirtHints: Readonly<Record<DirtEntry, string>> = {
  dirtTravel: 'How far from the closed stop; small where it stumbles off idle.',
  dirt: 'Between the wiper and the track: what is still to be seen.',
  visibleChange: 'Well above the noise of your trace.',
  wiperLimit: "From the sensor's data; leave empty if it is not known.",
  loadingLimit: 'In percent of the span; leave empty for no limit.',
};

/**
 * How a bench load is connected.
 *
 * @example
 * benchLoadLabels['pull-up'] // => "from the signal to the sensor's supply terminal"
 */
export const benchLoadLabels: Readonly<Record<BenchLoadWay, string>> = {
  'pull-down': 'from the signal to common',
  'pull-up': "from the signal to the sensor's supply terminal",
  'one-with-each': 'one recording with it down, one with it up',
};

/**
 * Why a bench load is not to be had.
 *
 * @example
 * noBenchLoadLabels['wiper-current'] // => "over the wiper's largest current"
 */
export const noBenchLoadLabels: Readonly<Record<NoBenchLoad['binding'], string>> = {
  visible: 'shows less than you can see',
  'wiper-current': "over the wiper's largest current",
  'loading-error': 'bends the curve too far',
};

/**
 * Headings and sentences for making dirt visible.
 *
 * @example
 * dirtWords.chosen('180 kΩ', 'from the signal to common') // => 'Hang 180 kΩ from the signal to common while you record: then this dirt shows.'
 */
export const dirtWords = {
  dirt: 'The dirt',
  limits: 'Limits',
  asItIs: (dirty: string, lifted: string): string =>
    say`As the hook-up is, the dirt moves the reading by ${dirty}; a wiper that lifts right off moves it by ${lifted}.`,
  floats: 'any amount, for nothing pulls the signal anywhere',
  noneNeeded: (dirty: string): string =>
    say`No load is needed: as the hook-up is, the dirt moves the reading by ${dirty}, which you can see.`,
  chosen: (ohms: string, way: string): string =>
    say`Hang ${ohms} ${way} while you record: then this dirt shows.`,
  impossible:
    'No resistor at the signal makes this dirt visible within your limits: clean the contact, or look for it with an ohmmeter from the wiper to an end.',
  takeOff: 'Take the load off again before you judge the readings at the stops by the windows.',
  ways: 'Loads that would show it',
  way: 'Load',
  resistor: 'Resistor',
  change: 'The dirt then moves the reading by',
  current: 'Worst current in the wiper',
  bend: 'Bend of the curve',
  not: (why: string): string => say`not possible: ${why}`,
} as const;
