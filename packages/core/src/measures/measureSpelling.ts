/** What a measure is of. A temperature difference has no zero of its own: 1 °C of it is 1 K. */
export type MeasureKind = 'temperature' | 'temperature-difference' | 'pressure' | 'length';

/** A unit as people write it, and how its numbers turn into the SI unit: value = factor · (number − zero). */
interface UnitOfMeasure {
  /** Its symbol, as it is printed. */
  readonly symbol: string;
  /** How else it is written, in lower case, without spaces. */
  readonly also: readonly string[];
  readonly factor: number;
  readonly zero?: number;
}

/** Standard gravity, m/s² (ISO 80000-3), and what a cubic metre of mercury weighs by convention, kg (from memory). */
const gravity = 9.80665;
const mercury = 13_595.1;
const millimetre = mercury * gravity * 1e-3;
const inch = 0.0254;
const pound = 0.45359237;

const kelvins = { symbol: 'K', also: ['kelvin', 'kelvins'], factor: 1 } as const;
const celsius = {
  symbol: '°C',
  also: ['c', 'degc', 'celsius', 'degreescelsius'],
  factor: 1,
} as const;
const fahrenheit = {
  symbol: '°F',
  also: ['f', 'degf', 'fahrenheit', 'degreesfahrenheit'],
  factor: 5 / 9,
} as const;

interface MeasureSpelling {
  /** What it is and how to write it, for the sentence of a refusal. */
  readonly wanted: string;
  readonly units: readonly UnitOfMeasure[];
}

/** The units of each kind; the first is what it is computed in. */
export const measureSpelling: Readonly<Record<MeasureKind, MeasureSpelling>> = {
  temperature: {
    wanted: 'a temperature with its unit, such as 20 °C, 68 °F or 293 K',
    units: [celsius, { ...fahrenheit, zero: 32 }, { ...kelvins, zero: 273.15 }],
  },
  'temperature-difference': {
    wanted: 'a temperature difference with its unit, such as 0.5 K or 1 °F',
    units: [kelvins, celsius, fahrenheit],
  },
  pressure: {
    wanted: 'a pressure with its unit, such as 101.3 kPa, 1013 hPa or 29.92 inHg',
    units: [
      { symbol: 'Pa', also: ['pascal', 'pascals'], factor: 1 },
      { symbol: 'hPa', also: [], factor: 100 },
      { symbol: 'kPa', also: [], factor: 1000 },
      { symbol: 'mbar', also: ['millibar', 'millibars', 'mb'], factor: 100 },
      { symbol: 'bar', also: [], factor: 1e5 },
      { symbol: 'inHg', also: ['"hg', '″hg', 'in.hg'], factor: millimetre * 25.4 },
      { symbol: 'mmHg', also: ['torr'], factor: millimetre },
      { symbol: 'cmHg', also: [], factor: millimetre * 10 },
      { symbol: 'psi', also: ['lbf/in²', 'lbf/in2'], factor: (pound * gravity) / inch ** 2 },
    ],
  },
  length: {
    wanted: 'a height with its unit, such as 350 m or 1150 ft',
    units: [
      { symbol: 'm', also: ['metre', 'metres', 'meter', 'meters'], factor: 1 },
      { symbol: 'ft', also: ['foot', 'feet', "'"], factor: 0.3048 },
    ],
  },
};
