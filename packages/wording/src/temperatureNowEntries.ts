import { say } from './say.js';
import { whole } from './whole.js';

/** The entries beside a thermistor's law where it is asked what it must read now. */
export type TemperatureNowEntry =
  | 'now'
  | 'pullUpOhms'
  | 'pullUpSupply'
  | 'meterInput'
  | 'dissipation'
  | 'timeConstant'
  | 'before';

/**
 * What each entry beside a thermistor's law is called.
 *
 * @example
 * temperatureNowLabels.pullUpOhms // => 'Pull-up resistor'
 */
export const temperatureNowLabels: Readonly<Record<TemperatureNowEntry, string>> = {
  now: 'Temperature of the sensor now',
  pullUpOhms: 'Pull-up resistor',
  pullUpSupply: 'Fed from',
  meterInput: 'Input resistance of the meter',
  dissipation: 'Heat that warms it by 1 K',
  timeConstant: 'Time constant',
  before: 'Temperature that it comes from',
};

/**
 * What each entry beside a thermistor's law means, in one line.
 *
 * @example
 * temperatureNowHints.now // => 'By a thermometer beside it, with its unit.'
 */
export const temperatureNowHints: Readonly<Record<TemperatureNowEntry, string>> = {
  now: 'By a thermometer beside it, with its unit.',
  pullUpOhms: 'In the control unit or on the bench; leave empty where only ohms are read.',
  pullUpSupply: 'Measured, often near 5 V.',
  meterInput: 'Across the sensor; leave empty where it does not matter.',
  dissipation:
    'Dissipation constant of the data sheet for this medium, 4 mW for 4 mW/K; leave empty if it is not known.',
  timeConstant: 'Of the data sheet for this medium; leave empty if it is not known.',
  before: 'Where it lay before it was put in.',
};

/** Resistances or voltages of a sound sensor, written with their unit. */
export interface BandWords {
  /** The lowest that is right. */
  readonly low: string;
  /** The nominal one. */
  readonly nominal: string;
  /** The highest that is right. */
  readonly high: string;
}

/**
 * Words of the page that tells what a temperature sensor must read now.
 *
 * @example
 * temperatureNowWords.shown('22 °C') // => 'A scan tool shows 22 °C of it.'
 */
export const temperatureNowWords = {
  now: 'Now',
  onPullUp: 'On a pull-up',
  further: 'Its own warming, and how long to wait',
  ohms: (at: string, band: BandWords): string =>
    whole(
      band,
      'band',
      () =>
        say`At ${at} a sound one has ${band.low} to ${band.high}, ${band.nominal} in the middle.`,
    ),
  noBand: (at: string, nominal: string): string =>
    say`At ${at} it has ${nominal}. Without a tolerance nothing can be judged: state the lowest and the highest.`,
  volts: (pullUp: string, supply: string, band: BandWords): string =>
    whole(
      band,
      'band',
      () => say`On ${pullUp} from ${supply} that is ${band.low} to ${band.high}.`,
    ),
  faults: (broken: string): string => say`A break shows ${broken}, a short 0 V.`,
  shown: (temperature: string): string => say`A scan tool shows ${temperature} of it.`,
  shownBand: (low: string, high: string): string =>
    say`A scan tool shows ${low} to ${high} of a sound one.`,
  perKelvin: (part: string): string =>
    say`1 K is ${part} of the resistance here: a thermometer that is off by that much looks like a wrong sensor.`,
  wait: (seconds: string, from: string, within: string): string =>
    say`Coming from ${from}, wait ${seconds} until it is within ${within}.`,
  heats: (rise: string, volts: string): string =>
    say`The current through it warms it by ${rise}; it then shows ${volts}.`,
  heatsBeyond:
    'The current would warm it beyond the manual’s temperatures: read it with less current, or by an ohmmeter.',
  table: 'What a sound one has',
  temperature: 'Temperature',
  lowest: 'Lowest',
  nominal: 'Middle',
  highest: 'Highest',
  voltage: 'On the pull-up',
  ohmsAt: (at: string): string => say`Resistance at ${at}`,
  voltsAt: (at: string): string => say`Voltage across it at ${at}`,
  needsSupply: 'Enter what feeds the pull-up, or leave the pull-up empty.',
} as const;
