import type { PullUp } from '../circuit/circuit.js';
import type { Farads, Fraction, Hertz, Ohms, Seconds, Volts } from '../units.js';
import type { NeedleMovement } from './needleMovement.js';

/** What every instrument that watches a signal does to it. */
interface Input {
  readonly name: string;
  readonly inputOhms: Ohms;
  /** Capacitance of input and cable together, F; 0 when left out. */
  readonly inputFarads?: Farads;
}

/** Lowest and highest reading, V. */
export interface InputRange {
  readonly low: Volts;
  readonly high: Volts;
}

/** A meter that shows digits: each of them the mean over an aperture. */
export interface DigitalMeter extends Input {
  readonly kind: 'digital-meter';
  /** The highest reading of each range, V, rising. */
  readonly ranges: readonly Volts[];
  /** The highest number that the display shows, such as 1999. */
  readonly counts: number;
  /** The range that is held, one of `ranges`; it is chosen by itself when left out. */
  readonly heldRange?: Volts;
  /** Length of one integration, s. */
  readonly aperture: Seconds;
  /** Between integrations, s; 0 when left out. */
  readonly deadTime?: Seconds;
  /** Between changes of the display, s; every conversion is shown when left out. */
  readonly displayInterval?: Seconds;
  /**
   * When the range changes: above and below these parts of the range's highest reading; and how long it shows nothing then, s. Above 100 % and
   * below 9 % of it, with no blank time, when left out.
   */
  readonly rangeChange?: {
    readonly up: Fraction;
    readonly down: Fraction;
    readonly blank: Seconds;
  };
  /** ±(part of the reading + counts), as the data sheet says. */
  readonly accuracy?: { readonly ofReading: Fraction; readonly counts: number };
  /** Whether it keeps the lowest and highest conversion. */
  readonly keepsExtremes?: boolean;
}

/** A meter with a needle. Its input resistance follows from sensitivity and range. */
export interface NeedleMeter {
  readonly kind: 'needle-meter';
  readonly name: string;
  readonly inputFarads?: Farads;
  /** Sensitivity, Ω/V of the range. */
  readonly ohmsPerVolt: Ohms;
  /** Full scale, V. */
  readonly range: Volts;
  /** One of 2 rad·π/s and a damping of 0.7 is assumed when left out: no multimeter's is published. */
  readonly movement?: NeedleMovement;
  /** Fiducial error, a part of full scale, such as 0.025 for class 2.5. */
  readonly accuracyClass?: Fraction;
  /** Error of reading the needle's place, a part of full scale; 0 when left out. */
  readonly parallax?: Fraction;
  /** Smallest movement that an eye notices, a part of full scale; 2 % when left out. */
  readonly noticed?: Fraction;
}

/** An oscilloscope with its probe; input resistance and capacitance are those at the probe's tip. */
export interface Oscilloscope extends Input {
  readonly kind: 'oscilloscope';
  readonly range: InputRange;
  readonly bits: number;
  /** −3 dB corner, Hz; without effect when left out. */
  readonly bandwidth?: Hertz;
  /** How long one record is: the time base times the divisions, s. */
  readonly record: Seconds;
  /** Samples in a record. */
  readonly memory: number;
  /** Shortest interval between samples, s. */
  readonly fastest: Seconds;
  /** Whether it keeps the lowest and highest of all it samples at its fastest, in each interval of the record. */
  readonly keepsPeaks?: boolean;
  /** Errors of offset, V, and gain, a part of the reading; half-widths. */
  readonly offsetError?: Volts;
  readonly gainError?: Fraction;
}

/** A logger, a microcontroller's converter or a sound input. */
export interface Logger extends Input {
  readonly kind: 'logger';
  readonly range: InputRange;
  readonly bits: number;
  readonly interval: Seconds;
  /** Time constant of the filter before the converter, s; none when left out. */
  readonly filter?: Seconds;
  /** The sampling capacitor behind a switch, and how long it is connected. */
  readonly sampling?: { readonly ohms: Ohms; readonly farads: Farads; readonly seconds: Seconds };
  /** Time constant of the capacitor in its input with the input's resistance, s; coupled directly when left out. */
  readonly highPass?: Seconds;
}

/** The input of a control unit, with what it takes for a fault. */
export interface ControlUnit {
  readonly kind: 'control-unit';
  readonly name: string;
  readonly inputFarads?: Farads;
  readonly pullDown?: Ohms;
  readonly pullUp?: PullUp;
  readonly filter?: Seconds;
  readonly interval: Seconds;
  /** Below and above these a reading is a fault, V. */
  readonly limits: InputRange;
  /** How long readings must be faults before one is set, s. */
  readonly debounce: Seconds;
}

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
