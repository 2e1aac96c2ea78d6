import { say } from './say.js';

/** The entries of readings in ice, in hot water and beside a thermometer. */
export type BathEntry =
  | 'iceOhms'
  | 'hotOhms'
  | 'hotTemperature'
  | 'roomOhms'
  | 'roomTemperature'
  | 'thermometer'
  | 'meterPart';

/**
 * What each entry of an ice and boiling check is called.
 *
 * @example
 * bathLabels.iceOhms // => 'Resistance in ice and water'
 */
export const bathLabels: Readonly<Record<BathEntry, string>> = {
  iceOhms: 'Resistance in ice and water',
  hotOhms: 'Resistance in boiling or hot water',
  hotTemperature: 'Thermometer in that water',
  roomOhms: 'Resistance in the room',
  roomTemperature: 'Thermometer beside it in the room',
  thermometer: 'Uncertainty of the thermometer',
  meterPart: 'Uncertainty of the ohmmeter',
};

/**
 * What each entry of an ice and boiling check means, in one line.
 *
 * @example
 * bathHints.hotTemperature // => 'Leave empty where the water boils: the air’s pressure tells its temperature.'
 */
export const bathHints: Readonly<Record<BathEntry, string>> = {
  iceOhms:
    'Crushed ice in little water, stirred; wait until it rests. OL where the meter shows that.',
  hotOhms: 'Its body in the water, its terminals dry. OL where the meter shows that.',
  hotTemperature: 'Leave empty where the water boils: the air’s pressure tells its temperature.',
  roomOhms: 'After it lay there for half an hour; leave empty if it was not read.',
  roomTemperature: 'With its unit; leave empty if it was not read.',
  thermometer: 'Standard uncertainty: half of the ± that it is good for.',
  meterPart: 'Standard uncertainty as a part of the reading: half of the ± that it is good for.',
};

/**
 * Words of the ice and boiling check.
 *
 * @example
 * bathWords.boils('99.9 °C', '100.9 kPa', '0.1 K').startsWith('Water boils at 99.9 °C') // => true
 */
export const bathWords = {
  readings: 'Read in ice and in boiling water',
  further: 'Read in the room, and the instruments',
  boils: (at: string, pressure: string, uncertainty: string): string =>
    say`Water boils at ${at} (± ${uncertainty}) in air of ${pressure}.`,
  needsReading: 'Enter at least one resistance: in ice, in boiling water, or in the room.',
  needsRoomTemperature:
    'Enter what the thermometer beside it shows, or leave the resistance empty.',
  boilsBeyond: (at: string, lowest: string, highest: string): string =>
    say`Water boils at ${at} here, beyond what the manual states, ${lowest} to ${highest}. Let it cool into that range and enter what a thermometer in it shows.`,
  iceBeyond: (lowest: string, highest: string): string =>
    say`Ice is at 0 °C, beyond what the manual states, ${lowest} to ${highest}; nothing is extrapolated.`,
  notIn: (lowest: string, highest: string): string =>
    say`This lies beyond what the manual states, ${lowest} to ${highest}; nothing is extrapolated.`,
  caution:
    'Boiling water and its steam scald: tongs, gloves, a stand that can’t tip. Keep the terminals dry and the flame away from fuel.',
  iceAt: 'Resistance in ice, 0 °C',
  boilingAt: (at: string): string => say`Resistance in boiling water, ${at}`,
} as const;
