import type {
  Celsius,
  Kelvins,
  Ohms,
  Pascals,
  PressureSensor,
  PressureSource,
  ReadOn,
  ReadPressure,
  Seconds,
  ThermistorLaw,
  ThermistorTolerances,
  TwoStateReading,
  TwoStateSensor,
  Volts,
  WindingLimits,
  WindingReading,
} from '@truesweep/core';
import { checkReadable, InputError } from '@truesweep/core';
import type { Job, JobRecording } from './job.js';

/** What all jobs of single readings have. */
interface Readings<Sensor, Reading> {
  readonly version: 3;
  /** What the job is called, for people. */
  readonly title: string;
  /** The sensor on the bench. */
  readonly sensor: Sensor;
  /** What was read, 0 to 1000 entries; nothing yet when left out. */
  readonly readings?: readonly Reading[];
  /** Whatever else is to be kept with it, for people; nothing when left out. */
  readonly notes?: string;
}

/** What every sensor has. */
interface Named<Kind extends string> {
  /** What it is. */
  readonly kind: Kind;
  /** What it is called, for people. */
  readonly name: string;
}

/** A bath that a thermistor was read in: its temperature by a thermometer, or by what it is. */
export interface BathReading {
  /** `ice` and `boiling` water know their temperature; `thermometer` when left out, and `temperature` tells it. */
  readonly bath?: 'thermometer' | 'ice' | 'boiling';
  /** What the thermometer beside the sensor shows, °C, −273 to 2000; left out for ice and boiling water. */
  readonly temperature?: Celsius;
  /** Its standard uncertainty, K, 0 to 100; of ice 0.1 K, and of boiling water what its pressure leaves, when left out; a thermometer's must be told. */
  readonly temperatureUncertainty?: Kelvins;
  /** How far the sensor may still have been from its bath, K, 0 to 100; 0 when left out. */
  readonly unsettled?: Kelvins;
  /** What an ohmmeter showed, Ω, 0 or more; left out where `volts` stand. */
  readonly ohms?: Ohms;
  /** What a voltmeter showed across the sensor on its pull-up, V, any; left out where `ohms` stand. */
  readonly volts?: Volts;
  /** Standard uncertainty of that, Ω or V, 0 or more. */
  readonly uncertainty: number;
}

/** A job of a temperature sensor. */
export interface ThermistorJob
  extends Readings<
    Named<'thermistor'> & {
      /** How its resistance falls. */
      readonly law: ThermistorLaw;
      /** How far a sound one may be off; not known when left out, but of a table with limits. */
      readonly tolerances?: ThermistorTolerances;
      /** Its dissipation constant in the bath, W/K, above 0; its self-heating is not reckoned with when left out. */
      readonly dissipation?: number;
      /** Its time constant in the bath, s, above 0; `expect` doesn't tell how long to wait when left out. */
      readonly timeConstant?: Seconds;
    },
    BathReading
  > {
  /** What the voltages were read on; needed only for such. */
  readonly readOn?: ReadOn;
  /** What is known of the air, for boiling water; needed only for such. */
  readonly air?: PressureSource;
}

/** A pressure at the port of a sensor, and its output with the supply at the same time. */
export interface PortReading {
  /** `open`, or what the pump's gauge or a barometer at the port shows. */
  readonly port: 'open' | ReadPressure;
  /** Standard uncertainty of that, Pa, 0 to 10⁶; 0 for the open port when left out, else it must be told. */
  readonly portUncertainty?: Pascals;
  /** The output, V, any. */
  readonly volts: Volts;
  /** The supply, measured at the sensor, V, above 0. */
  readonly supply: Volts;
  /** Standard uncertainty of each of the two voltages, V, 0 or more. */
  readonly uncertainty: Volts;
}

/** A recorded pump-down: its held steps in order, and what the gauge showed at each. */
export interface PumpDown extends JobRecording {
  /** What the gauge showed at each step, in order; one or more. */
  readonly ports: readonly ('open' | ReadPressure)[];
  /** Standard uncertainty of the gauge, Pa, 0 to 10⁶; left out where all ports are open. */
  readonly portUncertainty?: Pascals;
  /** The supply where the recording has none, V, above 0; needed only then. */
  readonly supply?: Volts;
  /** Standard uncertainty of the recorder's voltages, V, 0 or more. */
  readonly uncertainty: Volts;
}

/** A job of a pressure sensor. */
export interface PressureJob extends Readings<Named<'pressure'> & PressureSensor, PortReading> {
  /** What is known of the air at the bench. */
  readonly air: PressureSource;
  /** The temperature of the sensor, °C, −273 to 2000; 25 when left out. */
  readonly temperature?: Celsius;
  /** Recorded pump-downs; none when left out. */
  readonly recordings?: readonly PumpDown[];
}

/** A recording of a switch as it changes, for its bounce. */
export interface SwitchRecording extends JobRecording {
  /** Below this it is in the lower state, V, any. */
  readonly low: Volts;
  /** Above this it is in the upper state, V, not below `low`. */
  readonly high: Volts;
}

/** A job of a sensor or switch of two states. */
export interface TwoStateJob
  extends Readings<
    Named<'two-state'> &
      Omit<TwoStateSensor, 'kind'> & {
        /** What is read: volts, volts over the supply, or the resistance of a contact. */
        readonly reads: TwoStateSensor['kind'];
      },
    TwoStateReading
  > {
  /** Recordings of how it changes; none when left out. What they show is told, and not judged: no limit has a source. */
  readonly recordings?: readonly SwitchRecording[];
}

/** A job of a winding: a coil, an injector, a speed sensor. */
export interface WindingJob extends Readings<Named<'winding'> & WindingLimits, WindingReading> {}

/** A saved job of single readings, version 3, with every quantity in SI units and temperatures in °C. */
export type ReadingsJob = ThermistorJob | PressureJob | TwoStateJob | WindingJob;

/** Any saved job: of a potentiometer's sweeps, or of single readings. */
export type AnyJob = Job | ReadingsJob;

/**
 * Whether a job is of a potentiometer's sweeps.
 *
 * @throws InputError `missing` or `unreadable` for what is no job.
 *
 * @example
 * isSweepJob({ version: 3, title: 'Coil', sensor: { kind: 'winding', name: 'Coil', low: 0.7 } }) // => false
 */
export function isSweepJob(job: AnyJob): job is Job {
  checkReadable(job, 'job');
  const kind = (job as Partial<AnyJob> | null | undefined)?.sensor?.kind;
  if (typeof kind !== 'string') {
    throw new InputError(
      'missing',
      'job.sensor.kind',
      'job.sensor.kind is missing; a job says what its sensor is.',
    );
  }
  return kind === 'potentiometer';
}
