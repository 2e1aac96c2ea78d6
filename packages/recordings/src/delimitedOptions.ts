import { checkFields, type FieldRule, type FieldRules, InputError } from '@truesweep/core';
import { shown, textOption } from './shown.js';

/** What parts the fields of a row; a run of spaces counts as one. */
export type Delimiter = ',' | ';' | '\t' | '|' | ' ';
/** The decimal sign of the numbers. */
export type DecimalSign = '.' | ',';
/** What a column of times is read in: a unit, or `clock` for dates with times (ISO 8601) and times of day. */
export type TimeUnit = 's' | 'ms' | 'µs' | 'clock';
/** What a column of voltages is read in; counts and percent need a scale. */
export type SignalUnit = 'V' | 'mV' | 'counts' | '%';
/** What a column is read for. */
export type ColumnRole = 'time' | 'signal' | 'supply' | 'second' | 'position';

/** What is known about a text file beforehand; whatever is left out is found out from the file. */
export interface DelimitedOptions {
  /** Name of the file, for errors; `recording` when left out. */
  readonly name?: string;
  /** What stands between the fields; found out when left out. */
  readonly delimiter?: Delimiter;
  /** The decimal sign of its numbers; found out when left out. */
  readonly decimal?: DecimalSign;
  /**
   * The column of the times: its index, counted from 0, or its heading with or without the unit; found by heading or place when left out.
   */
  readonly timeColumn?: number | string;
  /** The column of the voltages, given like `timeColumn`; found by heading or place when left out. */
  readonly signalColumn?: number | string;
  /**
   * The column of the voltage across the sensor's end terminals, given like `timeColumn`. It is read only where it is named: a column
   * headed “supply” may as well be the source before the limiting resistor.
   */
  readonly supplyColumn?: number | string;
  /** The column of the second track's voltages, given like `timeColumn`; read only where it is named. */
  readonly secondColumn?: number | string;
  /** The column of the shaft's positions, given like `timeColumn`; read as written and only where it is named. */
  readonly positionColumn?: number | string;
  /** The unit of the times; it comes before what the heading says, which holds when it is left out. */
  readonly timeUnit?: TimeUnit;
  /** The unit of the voltages, supply and second track included; it comes before what the heading says, which holds when it is left out. */
  readonly signalUnit?: SignalUnit;
  /** Volts that one count or one percent stands for, above 0; needed for such a unit, and refused where no column has one. */
  readonly voltsPerUnit?: number;
  /** Samples per second, above 0, for a file without times; no column is read as times then. */
  readonly sampleRate?: number;
}

/** Powers of ten from each unit to s or V; counts, percent and the clock have scales of their own. */
export const unitPowers: Readonly<Record<TimeUnit | SignalUnit, number>> = {
  s: 0,
  ms: -3,
  µs: -6,
  clock: 0,
  V: 0,
  mV: -3,
  counts: 0,
  '%': 0,
};

/** Every delimiter, the surest sign of a table first. */
export const delimiters: readonly Delimiter[] = ['\t', ';', '|', ',', ' '];
export const decimalSigns: readonly DecimalSign[] = ['.', ','];
const timeUnits: readonly TimeUnit[] = ['s', 'ms', 'µs', 'clock'];
const signalUnits: readonly SignalUnit[] = ['V', 'mV', 'counts', '%'];

const column = (value: unknown, path: string): void => {
  if (typeof value === 'string' || (Number.isInteger(value) && (value as number) >= 0)) return;
  throw new InputError(
    typeof value === 'number' ? 'no-such-column' : 'not-a-column',
    path,
    `${path} is ${shown(value)}; it must be a heading, or the column's number counted from 0.`,
  );
};

const optionRules: FieldRules = {
  'name?': textOption,
  'delimiter?': oneOf(delimiters),
  'decimal?': oneOf(decimalSigns),
  'timeColumn?': column,
  'signalColumn?': column,
  'supplyColumn?': column,
  'secondColumn?': column,
  'positionColumn?': column,
  'timeUnit?': oneOf(timeUnits),
  'signalUnit?': oneOf(signalUnits),
  'voltsPerUnit?': aboveZero('V'),
  'sampleRate?': aboveZero('Hz'),
};

/** Refuses an option that is none of its values, or that nobody knows. */
export function checkOptions(options: DelimitedOptions): void {
  checkFields(options, 'options', optionRules);
  if (options.sampleRate === undefined || options.timeColumn === undefined) return;
  throw new InputError(
    'two-times',
    'options.sampleRate',
    'The options name a column of times and a sample rate as well; give one of the two.',
  );
}

function oneOf(allowed: readonly string[]): FieldRule {
  return (value, path) => {
    if (allowed.includes(value as string)) return;
    const list = allowed.map((one) => JSON.stringify(one)).join(', ');
    const wrong = `${path} is ${shown(value)}; it must be one of ${list}.`;
    throw new InputError('not-one-of', path, wrong);
  };
}

function aboveZero(unit: string): FieldRule {
  return (value, path) => {
    if (typeof value === 'number' && value >= 1e-30 && value <= 1e30) return;
    const wanted = `a number above 0 ${unit}, from 1e-30 to 1e30`;
    throw new InputError('out-of-range', path, `${path} is ${shown(value)}; it must be ${wanted}.`);
  };
}
