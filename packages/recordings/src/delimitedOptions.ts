import { InputError } from '@truesweep/core';

/** What parts the fields of a row; a run of spaces counts as one. */
export type Delimiter = ',' | ';' | '\t' | '|' | ' ';
/** The decimal sign of the numbers. */
export type DecimalSign = '.' | ',';
/** Units that a column of times is read in. */
export type TimeUnit = 's' | 'ms' | 'µs';
/** Units that a column of voltages is read in. */
export type SignalUnit = 'V' | 'mV';

/** What is known about a text file beforehand; whatever is left out is found out from the file. */
export interface DelimitedOptions {
  /** Name of the file, for errors. */
  readonly name?: string;
  readonly delimiter?: Delimiter;
  readonly decimal?: DecimalSign;
  /** The column of the times: its index, counted from 0, or its heading with or without the unit. */
  readonly timeColumn?: number | string;
  /** The column of the voltages, given like `timeColumn`. */
  readonly signalColumn?: number | string;
  /**
   * The column of the voltage across the sensor's end terminals, given like `timeColumn`. It is read only where it is named: a column
   * headed “supply” may as well be the source before the limiting resistor.
   */
  readonly supplyColumn?: number | string;
  /** The unit of the times; it comes before what the heading says. */
  readonly timeUnit?: TimeUnit;
  /** The unit of the voltages, supply included; it comes before what the heading says. */
  readonly signalUnit?: SignalUnit;
}

/** Powers of ten from each unit to s or V. */
export const unitPowers: Readonly<Record<TimeUnit | SignalUnit, number>> = {
  s: 0,
  ms: -3,
  µs: -6,
  V: 0,
  mV: -3,
};

/** Every delimiter, the surest sign of a table first. */
export const delimiters: readonly Delimiter[] = ['\t', ';', '|', ',', ' '];
export const decimalSigns: readonly DecimalSign[] = ['.', ','];
const timeUnits: readonly TimeUnit[] = ['s', 'ms', 'µs'];
const signalUnits: readonly SignalUnit[] = ['V', 'mV'];

/** Refuses an option that is given but is none of its values. */
export function checkOptions(options: DelimitedOptions): void {
  oneOf(options.delimiter, delimiters, 'delimiter');
  oneOf(options.decimal, decimalSigns, 'decimal');
  oneOf(options.timeUnit, timeUnits, 'timeUnit');
  oneOf(options.signalUnit, signalUnits, 'signalUnit');
}

function oneOf(value: string | undefined, allowed: readonly string[], name: string): void {
  if (value === undefined || allowed.includes(value)) return;
  const list = allowed.map((one) => JSON.stringify(one)).join(', ');
  throw new InputError(
    'not-one-of',
    `options.${name}`,
    `${name} is ${JSON.stringify(value)}; it must be one of ${list}.`,
  );
}
