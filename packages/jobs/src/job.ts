import type {
  Amps,
  Criteria,
  Fraction,
  Ohms,
  Position,
  Sampling,
  Seconds,
  Stretch,
  Volts,
} from '@truesweep/core';
import type { DelimitedOptions, SoundOptions } from '@truesweep/recordings';

/** The sensor on the bench, as its maker or the ohmmeter says. */
export interface JobSensor {
  readonly name: string;
  /** Resistance of the track between its ends, Ω. */
  readonly track: Ohms;
  readonly bottomResidual?: Ohms;
  readonly topResidual?: Ohms;
  readonly contact?: Ohms;
  /** Where on the track the wiper stands at the closed stop; 0 when left out. */
  readonly closedPosition?: Position;
  /** Where on the track the wiper stands at the open stop; 1 when left out. */
  readonly openPosition?: Position;
  readonly tolerances?: {
    readonly track?: Fraction;
    readonly closedPosition?: Position;
    readonly openPosition?: Position;
  };
}

/** What feeds the sensor and what hangs on its signal besides the instrument. */
export interface JobHookUp {
  readonly source: { readonly volts: Volts; readonly ohms?: Ohms; readonly currentLimit?: Amps };
  /** Series limiting resistor, Ω. */
  readonly limiter: Ohms;
  readonly leads?: { readonly supply?: Ohms; readonly ground?: Ohms; readonly signal?: Ohms };
  /** A deliberate bench load from the signal to common, Ω. */
  readonly pullDown?: Ohms;
  readonly pullUp?: { readonly ohms: Ohms; readonly volts: Volts };
  readonly tolerances?: {
    readonly source?: Fraction;
    readonly limiter?: Fraction;
    readonly pullDown?: Fraction;
  };
}

/** The recorder or meter that wrote the recording. */
export interface JobInstrument {
  readonly name: string;
  readonly inputResistance: Ohms;
  /** Smallest step of a reading, V. */
  readonly resolution?: Volts;
  /** Lowest and highest reading that it can show, V. */
  readonly range?: { readonly low: Volts; readonly high: Volts };
  /** Standard uncertainty of a reading, V. */
  readonly uncertainty?: Volts;
  /** `ac`: a capacitor in its input lets the level sag toward zero; for a sound recording it must be said. */
  readonly coupling?: 'dc' | 'ac';
  /** How it forms a sample: `picked` at a moment when left out. */
  readonly sampling?: Sampling;
  /** Interval of the samples that an `interpolated` recording was drawn between, s; needed with it. */
  readonly sampledEvery?: Seconds;
}

/** A recorded file, and what is known beforehand of how it is written. */
export interface JobRecording {
  /** Path of the file, relative to the job's own file. */
  readonly file: string;
  /** Size of the file, bytes, and the SHA-256 of its bytes; where they are given another file is refused. */
  readonly bytes?: number;
  readonly sha256?: string;
  /** What was done to the sensor when, on the recording's own clock. */
  readonly stretches?: readonly Stretch[];
  /** How a delimited text is read; what is left out is found out from the file. */
  readonly text?: Omit<DelimitedOptions, 'name'>;
  /** What a sound recording doesn't tell by itself; such a file can't be read without it. */
  readonly sound?: Omit<SoundOptions, 'name'>;
}

/** A saved job, version 2, with every quantity in SI units. */
export interface Job {
  readonly version: 2;
  readonly title: string;
  readonly sensor: JobSensor;
  readonly hookUp: JobHookUp;
  readonly instrument: JobInstrument;
  /** Limits that differ from the core's `defaultCriteria`. */
  readonly criteria?: Partial<Omit<Criteria, 'version'>>;
  readonly recordings?: readonly JobRecording[];
  readonly notes?: string;
}
