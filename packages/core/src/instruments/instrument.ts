import type { PullUp } from '../circuit/circuit.js';
import type { Farads, Fraction, Hertz, Ohms, Seconds, Volts } from '../units.js';
import type { NeedleMovement } from './needleMovement.js';

/** What every instrument that watches a signal does to it. */
interface Input {
  /** What it is called, for people. */
  readonly name: string;
  /** Resistance of its input, Ω, above 0; of an oscilloscope at the probe's tip. */
  readonly inputOhms: Ohms;
  /** Capacitance of input and cable together, F, 0 to 1; 0 when left out. */
  readonly inputFarads?: Farads;
}

/** Lowest and highest reading, V. */
export interface InputRange {
  /** Lowest reading, V, from −10⁹. */
  readonly low: Volts;
  /** Highest reading, V, above `low`, up to 10⁹. */
  readonly high: Volts;
}

/** A meter that shows digits: each of them the mean over an aperture. */
export interface DigitalMeter extends Input {
  readonly kind: 'digital-meter';
  /** The highest reading of each range, V, rising. */
  readonly ranges: readonly Volts[];
  /** The highest number that the display shows, such as 1999; a whole number from 1 to 10⁹. */
  readonly counts: number;
  /** The range that is held, V, any of `ranges`; it is chosen by itself when left out. */
  readonly heldRange?: Volts;
  /** Length of one integration, s, above 0. */
  readonly aperture: Seconds;
  /** Between integrations, s, 0 or more; 0 when left out. */
  readonly deadTime?: Seconds;
  /** Between changes of the display, s, above 0; every conversion is shown when left out. */
  readonly displayInterval?: Seconds;
  /**
   * When the range changes: above and below these parts of the range's highest reading (0.1 to 10, and 0 to `up`); and how long it shows
   * nothing then, s, 0 or more. Above 100 % and below 9 % of it, with no blank time, when left out.
   */
  readonly rangeChange?: {
    readonly up: Fraction;
    readonly down: Fraction;
    readonly blank: Seconds;
  };
  /** ±(part of the reading, 0 to 1, + counts, 0 to the display's), as the data sheet says; not known, and taken for 0, when left out. */
  readonly accuracy?: { readonly ofReading: Fraction; readonly counts: number };
  /** Whether it keeps the lowest and highest conversion; it does not when left out. */
  readonly keepsExtremes?: boolean;
}

/** A meter with a needle. Its input resistance follows from sensitivity and range. */
export interface NeedleMeter {
  readonly kind: 'needle-meter';
  /** What it is called, for people. */
  readonly name: string;
  /** Capacitance of input and cable together, F, 0 to 1; 0 when left out. */
  readonly inputFarads?: Farads;
  /** Sensitivity, Ω/V of the range, above 0. */
  readonly ohmsPerVolt: Ohms;
  /** Full scale, V, above 0. */
  readonly range: Volts;
  /** One of 2 rad·π/s and a damping of 0.7 is assumed when left out: no multimeter's is published. */
  readonly movement?: NeedleMovement;
  /** Fiducial error, a part of full scale, 0 to 1, such as 0.025 for class 2.5; not known, and taken for 0, when left out. */
  readonly accuracyClass?: Fraction;
  /** Error of reading the needle's place, a part of full scale, 0 to 1; 0 when left out. */
  readonly parallax?: Fraction;
  /** Smallest movement that an eye notices, a part of full scale, 0 to 1; 2 % when left out. */
  readonly noticed?: Fraction;
}

/** An oscilloscope with its probe; input resistance and capacitance are those at the probe's tip. */
export interface Oscilloscope extends Input {
  readonly kind: 'oscilloscope';
  /** Lowest and highest voltage on the screen, V. */
  readonly range: InputRange;
  /** Resolution of its converter over the range, bits, 1 to 32. */
  readonly bits: number;
  /** −3 dB corner, Hz, above 0; without effect when left out. */
  readonly bandwidth?: Hertz;
  /** How long one record is: the time base times the divisions, s, above 0. */
  readonly record: Seconds;
  /** Samples in a record, a whole number, 2 or more. */
  readonly memory: number;
  /** Shortest interval between samples, s, above 0. */
  readonly fastest: Seconds;
  /**
   * Whether it keeps the lowest and highest of all it samples at its fastest, in each interval of the record; it does not when left out.
   */
  readonly keepsPeaks?: boolean;
  /** Error of the zero, V, half-width, 0 or more; 0 when left out. */
  readonly offsetError?: Volts;
  /** Error of the gain, a part of the reading, half-width, 0 to 1; 0 when left out. */
  readonly gainError?: Fraction;
}

/** A logger, a microcontroller's converter or a sound input. */
export interface Logger extends Input {
  readonly kind: 'logger';
  /** Lowest and highest voltage that it can record, V. */
  readonly range: InputRange;
  /** Resolution of its converter over the range, bits, 1 to 32. */
  readonly bits: number;
  /** Between samples, s, above 0. */
  readonly interval: Seconds;
  /** Time constant of the filter before the converter, s, 0 or more; 0 (none) when left out. */
  readonly filter?: Seconds;
  /**
   * The sampling capacitor behind a switch, and how long it is connected: Ω, 0 or more, F and s, above 0; it settles fully when left out.
   */
  readonly sampling?: { readonly ohms: Ohms; readonly farads: Farads; readonly seconds: Seconds };
  /** Time constant of the capacitor in its input with the input's resistance, s, above 0; coupled directly when left out. */
  readonly highPass?: Seconds;
}

/** The input of a control unit, with what it takes for a fault. */
export interface ControlUnit {
  readonly kind: 'control-unit';
  /** What it is called, for people. */
  readonly name: string;
  /** Capacitance of input and cable together, F, 0 to 1; 0 when left out. */
  readonly inputFarads?: Farads;
  /** From its input to its ground, Ω, above 0; none when left out. */
  readonly pullDown?: Ohms;
  /** From its input up; none when left out. */
  readonly pullUp?: PullUp;
  /** Time constant of the filter before its converter, s, 0 or more; 0 (none) when left out. */
  readonly filter?: Seconds;
  /** Between its readings, s, above 0. */
  readonly interval: Seconds;
  /** Below and above these a reading is a fault, V. */
  readonly limits: InputRange;
  /** How long readings must be faults before one is set, s, 0 or more. */
  readonly debounce: Seconds;
}

/** Whatever the wiper’s signal is looked at with; its `kind` tells which. */
export type Instrument = DigitalMeter | NeedleMeter | Oscilloscope | Logger | ControlUnit;

/** What a result rests on that nobody told. */
export type Assumption =
  | 'dead-time-0'
  | 'every-conversion-shown'
  | 'movement-usual'
  | 'eye-notices-2-percent'
  | 'three-steps-noticed'
  | 'signal-at-rest'
  | 'bandwidth-unlimited'
  | 'no-filter'
  | 'input-capacitance-0';
