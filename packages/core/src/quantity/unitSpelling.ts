/** A unit that quantities are read and written in; `%` stands for a fraction in hundredths, `°` for degrees of angle. */
export type QuantityUnit = 'Ω' | 'V' | 'A' | 'W' | 's' | 'F' | 'Hz' | '%' | '°';

/** How people write one unit. */
interface UnitSpelling {
  /** What the unit measures and how to write it, for the sentence of a refusal. */
  readonly wanted: string;
  /** Symbols; upper and lower case differ. */
  readonly symbols: readonly string[];
  /** Words in lower case; any case is read. */
  readonly words: readonly string[];
  /** Whether codes such as 4R7, 4k7 or 3V3 are in use: a letter in the place of the decimal sign. */
  readonly coded: boolean;
}

/** Whether a unit takes SI prefixes. */
export function takesPrefixes(unit: QuantityUnit): boolean {
  return unit !== '%' && unit !== '°';
}

/** The spellings of every unit. Lower-case r, v, a, w and hz are how the trade types them. */
export const unitSpelling: Readonly<Record<QuantityUnit, UnitSpelling>> = {
  Ω: {
    wanted: 'a resistance such as 4.7 kΩ, 4k7 or 470R',
    symbols: ['Ω', 'R', 'r'],
    words: ['ohms', 'ohm'],
    coded: true,
  },
  V: {
    wanted: 'a voltage such as 5 V or 500 mV',
    symbols: ['V', 'v'],
    words: ['volts', 'volt'],
    coded: true,
  },
  A: {
    wanted: 'a current such as 5 mA or 20 µA',
    symbols: ['A', 'a'],
    words: ['amperes', 'ampere', 'amps', 'amp'],
    coded: true,
  },
  W: {
    wanted: 'a power such as 0.25 W or 250 mW',
    symbols: ['W', 'w'],
    words: ['watts', 'watt'],
    coded: true,
  },
  s: {
    wanted: 'a time such as 2 s, 15 ms or 20 µs',
    symbols: ['s'],
    words: ['seconds', 'second', 'secs', 'sec'],
    coded: false,
  },
  F: {
    wanted: 'a capacitance such as 47 nF or 4n7',
    symbols: ['F'],
    words: ['farads', 'farad'],
    coded: true,
  },
  Hz: {
    wanted: 'a frequency such as 50 Hz or 1 kHz',
    symbols: ['Hz', 'hz', 'HZ'],
    words: ['hertz'],
    coded: false,
  },
  '%': {
    wanted: 'a percentage such as 5 %',
    symbols: ['%'],
    words: ['percent'],
    coded: false,
  },
  '°': {
    wanted: 'an angle such as 2° or 1.5°',
    symbols: ['°'],
    words: ['degrees', 'degree', 'deg'],
    coded: false,
  },
};
