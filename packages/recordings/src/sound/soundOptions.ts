import { InputError } from '@truesweep/core';

/** What a sound recording does not tell by itself. */
export interface SoundOptions {
  /** Name of the file, for errors; `recording` when left out. */
  readonly name?: string;
  /** Voltage at the input that a full-scale sample stands for, V, above 0: measured with a known voltage, for no sound file tells it. */
  readonly fullScale: number;
  /** By how much the signal was divided before the input, a ratio above 0; 1 where it was not. */
  readonly attenuation: number;
  /** That the input feeds nothing into the sensor: the bias for a microphone must be off. */
  readonly microphoneBias: 'off';
  /** The channel of the signal, counted from 0; the first when left out. */
  readonly signalChannel?: number;
  /** The channel of the supply, counted from 0, with the same full scale; not read when left out. */
  readonly supplyChannel?: number;
  /** The channel of a second track, counted from 0, with the same full scale; not read when left out. */
  readonly secondChannel?: number;
}

/** Refuses options that are missing or none of their values. */
export function checkSoundOptions(options: SoundOptions): void {
  above0(options.fullScale, 'fullScale', 'the volts that a full-scale sample stands for');
  above0(options.attenuation, 'attenuation', 'by how much the signal was divided, 1 if not at all');
  if ((options.microphoneBias as unknown) === 'off') return;
  throw new InputError(
    'not-one-of',
    'options.microphoneBias',
    'microphoneBias must be "off": an input that feeds a microphone also feeds the sensor, and its readings are not the sensor\'s.',
  );
}

function above0(value: unknown, name: string, what: string): void {
  if (typeof value === 'number' && value > 0 && value < Number.POSITIVE_INFINITY) return;
  throw new InputError(
    value === undefined ? 'missing' : 'out-of-range',
    `options.${name}`,
    `${name} is ${value === undefined ? 'missing' : String(value)}; it must be a finite number above 0: ${what}.`,
  );
}
