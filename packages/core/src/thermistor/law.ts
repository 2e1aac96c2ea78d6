import type { Celsius, Kelvins, Ohms } from '../units.js';

/** A row of a thermistor's table. */
export interface ThermistorRow {
  /** °C, rising from row to row. */
  readonly temperature: Celsius;
  /** The nominal resistance there, Ω, above 0, falling from row to row. */
  readonly ohms: Ohms;
  /** The lowest resistance of a sound one, Ω, above 0 and not above `ohms`; in all rows or in none. */
  readonly low?: Ohms;
  /** The highest, Ω, not below `ohms`; in all rows or in none. */
  readonly high?: Ohms;
}

/** How the resistance of a thermistor (NTC) falls with temperature, and in which range that is known. Resistances without load. */
export type ThermistorLaw =
  /** A table, of a data sheet or a service manual: between its rows ln R is a straight line over 1/T. */
  | {
      readonly kind: 'table';
      /** 2 to 1000 rows. */
      readonly rows: readonly ThermistorRow[];
    }
  /** Steinhart and Hart's law: 1/T = a + b·ln R + c·(ln R)³, T in K, R in Ω. */
  | {
      readonly kind: 'steinhart-hart';
      /** Per K, −1 to 1. */
      readonly a: number;
      /** Per K, above 0, at most 1. */
      readonly b: number;
      /** Per K, −1 to 1; 0 is the law of one B. */
      readonly c: number;
      /** The lowest temperature that it holds at, °C, −273 to 2000. */
      readonly lowest: Celsius;
      /** The highest, °C, above the lowest. */
      readonly highest: Celsius;
    }
  /** One B: R = R₁·exp(B(1/T − 1/T₁)). A B belongs to two temperatures; of one part B25/50, B25/85 and B25/100 differ by 2 %. */
  | {
      readonly kind: 'b';
      /** K, 10 to 100,000. */
      readonly b: Kelvins;
      /** The resistance at the first temperature, Ω, above 0. */
      readonly ohms: Ohms;
      /** The first temperature, °C, −273 to 2000, such as 25. */
      readonly from: Celsius;
      /** The second, °C, −273 to 2000, such as 85; another than the first. */
      readonly to: Celsius;
      /** The lowest temperature that it is used at, °C, −273 to 2000; the lower of the two when left out. */
      readonly lowest?: Celsius;
      /** The highest, °C, above the lowest; the higher of the two when left out. */
      readonly highest?: Celsius;
    };
