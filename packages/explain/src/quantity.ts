/**
 * A unit that a working writes. `1` is a plain number, `%` a fraction in hundredths, `°` an angle in degrees; a temperature in °C counts
 * from 273.15 K (ISO 80000-5), a difference of two is in K.
 */
export type WorkingUnit = keyof typeof unitNames;

/** Each unit as mathjs knows it; none for plain numbers. */
export const unitNames = {
  V: 'V',
  Ω: 'ohm',
  A: 'A',
  W: 'W',
  S: 'S',
  s: 's',
  F: 'F',
  Hz: 'Hz',
  Pa: 'Pa',
  m: 'm',
  K: 'K',
  '°C': 'K',
  '°': 'deg',
  '1': '',
  '%': '',
  'V/s': 'V/s',
  'V/Ω': 'V/ohm',
  '°/V': 'deg/V',
  'K/m': 'K/m',
  'm/s²': 'm/s^2',
  'J/(kg·K)': 'J/(kg K)',
  '1/K': '1/K',
  '1/Pa': '1/Pa',
} as const;

/** A value with its name. */
export interface Quantity {
  /** As it stands in formulas: a letter, and after `_` what stands below it: `R_t`. */
  readonly symbol: string;
  /** What it is, in words. */
  readonly meaning: string;
  /** Any finite number, in the SI unit without prefix; of `%` a fraction, of `°` degrees. */
  readonly value: number;
  /** What it is written in. */
  readonly unit: WorkingUnit;
  /** Its standard uncertainty, in the unit of `value`, above 0: the digits that are shown follow it. Not known when left out. */
  readonly uncertainty?: number;
}
