import { say } from './say.js';

/** The entries of a coil's check. */
export type CoilEntry =
  | 'coilLow'
  | 'coilHigh'
  | 'statedAt'
  | 'conductor'
  | 'coilOhms'
  | 'coilLeads'
  | 'coilTemperature'
  | 'coilTemperatureUncertainty'
  | 'coilUncertainty'
  | 'feed'
  | 'inductance';

/**
 * What each entry of a coil's check is called.
 *
 * @example
 * coilLabels.statedAt // => 'Temperature that they are stated for'
 */
export const coilLabels: Readonly<Record<CoilEntry, string>> = {
  coilLow: 'Lowest resistance that is right',
  coilHigh: 'Highest resistance that is right',
  statedAt: 'Temperature that they are stated for',
  conductor: 'Its wire is of',
  coilOhms: 'Resistance read',
  coilLeads: 'What the test leads alone read',
  coilTemperature: 'Temperature of the winding',
  coilTemperatureUncertainty: 'Uncertainty of that temperature',
  coilUncertainty: 'Uncertainty of the ohmmeter',
  feed: 'Voltage that it works on',
  inductance: 'Inductance',
};

/**
 * What each entry of a coil's check means, in one line.
 *
 * @example
 * coilHints.coilLeads // => 'Their tips held together; leave empty if it was not read.'
 */
export const coilHints: Readonly<Record<CoilEntry, string>> = {
  coilLow: 'From the machine’s service manual; leave empty if it states none.',
  coilHigh: 'From the same place; leave empty if it states none.',
  statedAt: 'Often 20 °C.',
  conductor: 'Copper but where something else is known.',
  coilOhms: 'At its terminals, unplugged; OL where the meter shows that.',
  coilLeads: 'Their tips held together; leave empty if it was not read.',
  coilTemperature: 'Its own, not the room’s: after a run it is hotter inside than outside.',
  coilTemperatureUncertainty: 'Standard uncertainty, with its unit.',
  coilUncertainty: 'Standard uncertainty: half of the ± that it is good for.',
  feed: 'For the current and the kick; leave empty if only ohms matter.',
  inductance: 'With its unit, 6 mH or 0.5 H; leave empty if it is not known.',
};

/**
 * Words of a coil's check.
 *
 * @example
 * coilWords.current('3 A', '36 W', '12 V') // => 'At 12 V 3 A flow, which heat it with 36 W.'
 */
export const coilWords = {
  manual: 'From the service manual',
  readings: 'Read at its terminals',
  further: 'The instruments, and the wire',
  current: (amps: string, watts: string, volts: string): string =>
    say`At ${volts} ${amps} flow, which heat it with ${watts}.`,
  currentTitle: 'Its current, and what opening it sets free',
  conductors: { copper: 'copper', aluminium: 'aluminium' },
  limitsAt: (low: string, high: string, at: string): string =>
    say`At ${at} right is ${low} to ${high}.`,
  atLeastAt: (low: string, at: string): string => say`At ${at} right is ${low} or more.`,
  atMostAt: (high: string, at: string): string => say`At ${at} right is ${high} or less.`,
  kick: (volts: string, joules: string): string =>
    say`Opened in a microsecond this coil would make ${volts} of its ${joules}, were there nothing to limit it: an arc or a diode does. Never open a fed coil by hand, and keep fuel vapour away.`,
  someKick:
    'A fed coil that is opened kicks with hundreds of volts, an ignition coil with thousands: never open it by hand, use a spark gap that the service manual allows, and keep fuel vapour away.',
  feedBriefly:
    'Never feed a coil of a few ohms from a battery for more than an instant: it heats and may burn (common practice, no source).',
  needsLimit: 'Enter the lowest or the highest resistance that is right.',
  belowLow: 'This is below the lowest; write the higher of the two here.',
  table: 'Right at other temperatures',
  temperature: 'Temperature',
  low: 'Lowest',
  high: 'Highest',
  notInductance: (text: string): string =>
    say`“${text}” is no inductance; write one with its unit, such as 6 mH or 0.5 H.`,
  resistanceAt: (at: string): string => say`Resistance at ${at}`,
} as const;
