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

/** The sensor on the bench, a potentiometer, as its maker or the ohmmeter says. */
export interface JobSensor {
  /** What it is. Other kinds have jobs of their own: see `AnyJob`. */
  readonly kind: 'potentiometer';
  /** What it is called, for people. */
  readonly name: string;
  /** Resistance of the track between its ends, Ω, above 0. */
  readonly track: Ohms;
  /** Resistance between the bottom terminal and the track, Ω, 0 or more; 0 when left out. */
  readonly bottomResidual?: Ohms;
  /** Resistance between the top terminal and the track, Ω, 0 or more; 0 when left out. */
  readonly topResidual?: Ohms;
  /** Resistance of the wiper's contact, Ω, 0 or more; 0 when left out. */
  readonly contact?: Ohms;
  /** Where on the track the wiper stands at the closed stop, fraction from 0 to 1; 0 when left out. */
  readonly closedPosition?: Position;
  /** Where on the track the wiper stands at the open stop, fraction from 0 to 1; 1 when left out. */
  readonly openPosition?: Position;
  /** How far track (fraction of itself) and places (fractions of the track) may be off, either way, 0 to 1; each 0 when left out. */
  readonly tolerances?: {
    readonly track?: Fraction;
    readonly closedPosition?: Position;
    readonly openPosition?: Position;
  };
}

/** What feeds the sensor and what hangs on its signal besides the instrument. */
export interface JobHookUp {
  /** Its voltage, V, 0 to 10⁶; its inner resistance, Ω, 0 when left out; its current limit, A, above 0, none when left out. */
  readonly source: { readonly volts: Volts; readonly ohms?: Ohms; readonly currentLimit?: Amps };
  /** Series limiting resistor, Ω, 0 or more. */
  readonly limiter: Ohms;
  /** Resistance of the leads, Ω, 0 or more; each 0 when left out. */
  readonly leads?: { readonly supply?: Ohms; readonly ground?: Ohms; readonly signal?: Ohms };
  /** A deliberate bench load from the signal to common, Ω, 0 or more; none when left out. */
  readonly pullDown?: Ohms;
  /** A deliberate resistor from the signal, Ω, 0 or more, up to a voltage of its own, V, 0 or more; none when left out. */
  readonly pullUp?: { readonly ohms: Ohms; readonly volts: Volts };
  /** How far they may be off, fractions of themselves, 0 to 1; each 0 when left out. */
  readonly tolerances?: {
    readonly source?: Fraction;
    readonly limiter?: Fraction;
    readonly pullDown?: Fraction;
  };
}

/** The recorder or meter that wrote the recording. */
export interface JobInstrument {
  /** What it is called, for people. */
  readonly name: string;
  /** Resistance of its input, Ω, above 0. */
  readonly inputResistance: Ohms;
  /** Smallest step of a reading, V, 0 or more; found from the recording when left out. */
  readonly resolution?: Volts;
  /** Lowest and highest reading that it can show, V, from low to high; found from the recording when left out. */
  readonly range?: { readonly low: Volts; readonly high: Volts };
  /** Standard uncertainty of a reading, V, 0 or more; none enters the judgement when left out. */
  readonly uncertainty?: Volts;
  /** `ac`: a capacitor in its input lets the level sag toward zero; `dc` when left out, but for a sound recording it must be said. */
  readonly coupling?: 'dc' | 'ac';
  /** How it forms a sample: `picked` at a moment when left out. */
  readonly sampling?: Sampling;
  /** Interval of the samples that an `interpolated` recording was drawn between, s, above 0; needed with it, and only with it. */
  readonly sampledEvery?: Seconds;
}

/** A recorded file, and what is known beforehand of how it is written. */
export interface JobRecording {
  /** Path of the file, relative to the job's own file. */
  readonly file: string;
  /** Size of the file, bytes, 0 or more; where it is given a file of another size is refused. */
  readonly bytes?: number;
  /** SHA-256 of the file's bytes, 64 hexadecimal digits; where it is given another file is refused. */
  readonly sha256?: string;
  /** What was done to the sensor when, on the recording's own clock; nothing was noted when left out. */
  readonly stretches?: readonly Stretch[];
  /** How a delimited text is read; what is left out is found out from the file. */
  readonly text?: Omit<DelimitedOptions, 'name'>;
  /** What a sound recording doesn't tell by itself; such a file can't be read without it. */
  readonly sound?: Omit<SoundOptions, 'name'>;
}

/** A saved job of sweeps, version 3, with every quantity in SI units. */
export interface Job {
  readonly version: 3;
  /** What the job is called, for people. */
  readonly title: string;
  /** The sensor on the bench. */
  readonly sensor: JobSensor;
  /** What feeds it and what hangs on its signal. */
  readonly hookUp: JobHookUp;
  /** What recorded it. */
  readonly instrument: JobInstrument;
  /** Limits that differ from the core's `defaultCriteria`; none do when left out. */
  readonly criteria?: Partial<Omit<Criteria, 'version'>>;
  /** The recordings that belong to it; none when left out. */
  readonly recordings?: readonly JobRecording[];
  /** Whatever else is to be kept with it, for people; nothing when left out. */
  readonly notes?: string;
}
