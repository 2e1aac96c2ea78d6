import type { Celsius, Fraction, Pascals, Volts } from '../units.js';

/** A row of a pressure sensor's table: a pressure and the output there, as a ratio to the supply. */
export interface PressureRow {
  /** Pa, rising from row to row; of a gauge sensor it may be below 0. */
  readonly pressure: Pascals;
  /** Output over supply, −1 to 2. */
  readonly ratio: Fraction;
}

/** A factor on the error band at a temperature, a straight line between the rows. */
export interface ErrorFactor {
  /** °C, rising from row to row. */
  readonly temperature: Celsius;
  /** A number, 1 or more. */
  readonly factor: number;
}

/**
 * A three-wire pressure sensor whose output is a part of its supply (ratiometric), as its maker or the service manual describes it.
 */
export interface PressureSensor {
  /** What its pressure counts from: empty space, or the air around. Never assumed. */
  readonly reference: 'absolute' | 'gauge';
  /** How its output answers. */
  readonly response:
    | {
        readonly kind: 'line';
        /** Output over supply for each Pa, not 0: K₁ of V = V_s·(K₁·P + K₂). */
        readonly gain: number;
        /** Output over supply at 0 Pa, −10 to 10: K₂. */
        readonly offset: Fraction;
        /** The lowest pressure that it holds at, Pa, any; of an absolute sensor 0 or more. */
        readonly lowest: Pascals;
        /** The highest, Pa, above the lowest. */
        readonly highest: Pascals;
      }
    | {
        readonly kind: 'table';
        /** 2 to 1000 rows; straight lines between them. */
        readonly rows: readonly PressureRow[];
      };
  /** How far a sound one may be off, as a pressure, Pa, 0 or more, either way; left out where it is not known, and nothing can be judged. */
  readonly error?: Pascals;
  /** By what the error grows away from room temperature; not at all when left out. */
  readonly errorFactors?: readonly ErrorFactor[];
  /** The supply that it is made for, V, above 0; any when left out. */
  readonly supply?: { readonly low: Volts; readonly high: Volts };
}
