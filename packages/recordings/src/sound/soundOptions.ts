import { checkFields, type FieldRule, type FieldRules, InputError } from '@truesweep/core';
import { shown, textOption } from '../shown.js';

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

const channel: FieldRule = (value, path) => {
  if (Number.isInteger(value) && (value as number) >= 0) return;
  const wrong = `${path} is ${shown(value)}; it must be a channel's number, counted from 0.`;
  throw new InputError('no-such-channel', path, wrong);
};

const optionRules: FieldRules = {
  'name?': textOption,
  fullScale: above0('the volts that a full-scale sample stands for'),
  attenuation: above0('by how much the signal was divided, 1 if not at all'),
  microphoneBias: (value, path) => {
    if (value === 'off') return;
    throw new InputError(
      'not-one-of',
      path,
      `${path} must be "off": an input that feeds a microphone also feeds the sensor, and its readings are not the sensor's.`,
    );
  },
  'signalChannel?': channel,
  'supplyChannel?': channel,
  'secondChannel?': channel,
};

/** Refuses options that are missing, none of their values, or that nobody knows. */
export function checkSoundOptions(options: SoundOptions): void {
  checkFields(options, 'options', optionRules);
}

/** Up to a million volts in full scale, divided by up to a million. */
function above0(what: string): FieldRule {
  return (value, path) => {
    if (typeof value === 'number' && value >= 1e-12 && value <= 1e6) return;
    throw new InputError(
      value === undefined ? 'missing' : 'out-of-range',
      path,
      `${path} is ${shown(value)}; it must be a number above 0, from 1e-12 to 1e6: ${what}.`,
    );
  };
}
