import type { Celsius, CheckOutcome, Ohms } from '@truesweep/core';

/** Between which values a reading is right at one place of the axis. */
export interface DrawnBand {
  /** The lowest that is right, in the unit of the readings, any. */
  readonly low: number;
  /** The nominal value, in the unit of the readings, any; the line through them is drawn where every point has one, and none when left out. */
  readonly nominal?: number;
  /** The highest that is right, in the unit of the readings, not below the lowest. */
  readonly high: number;
}

/** What came of a reading, and how uncertain it is. */
export interface DrawnReading {
  /** Its standard uncertainty, in its own unit, 0 or more; no bar is drawn when left out. Bars are twice as long to either side. */
  readonly uncertainty?: number;
  /** What came of its judgement, as a code. */
  readonly outcome: CheckOutcome;
}

/** What `ThermistorDrawing` draws. */
export interface ThermistorDrawingProps {
  /** Begins the `id` of the drawing's elements; once in a page. */
  readonly id: string;
  /** Limits and nominal resistance, Ω above 0, at 2 temperatures or more, which rise from point to point. */
  readonly points: readonly (DrawnBand & {
    /** Temperature, °C, any above −273.15. */
    readonly temperature: Celsius;
  })[];
  /** What was read, 0 or more readings, numbered from 1 in this order. */
  readonly readings: readonly (DrawnReading & {
    /** Temperature, °C, any above −273.15. */
    readonly temperature: Celsius;
    /** Standard uncertainty of the temperature, K, 0 or more; no bar is drawn when left out. */
    readonly temperatureUncertainty?: number;
    /** Resistance, Ω, 0 or more; Infinity where nothing connects: an arrow at the edge, as is all that lies far beyond the limits. */
    readonly ohms: Ohms;
  })[];
  /** The drawing's width, 240 to 4000; 384 when left out. */
  readonly width?: number;
}

/** What `PressureDrawing` draws. */
export interface PressureDrawingProps {
  /** Begins the `id` of the drawing's elements; once in a page. */
  readonly id: string;
  /** The unit of limits and readings: V, or 1 for the signal as a ratio to the supply. */
  readonly unit: 'V' | '1';
  /** What the pressures are counted from. */
  readonly against: 'absolute' | 'gauge';
  /** Limits and nominal signal at 2 pressures or more, which rise from point to point. */
  readonly points: readonly (DrawnBand & {
    /** Pressure, Pa: a number above 0 where it is absolute, any where it is gauge. */
    readonly pressure: number;
  })[];
  /** What was read, 0 or more readings, numbered from 1 in this order. */
  readonly readings: readonly (DrawnReading & {
    /** Pressure, Pa, any. */
    readonly pressure: number;
    /** Standard uncertainty of the pressure, Pa, 0 or more; no bar is drawn when left out. */
    readonly pressureUncertainty?: number;
    /** The signal, in `unit`, any. */
    readonly signal: number;
  })[];
  /** The drawing's width, 240 to 4000; 384 when left out. */
  readonly width?: number;
}
