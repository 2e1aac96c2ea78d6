import { InputError, type Sweep, type UnreadRows } from '@truesweep/core';
import { checkBytes } from '../shown.js';
import { type SoundFormat, soundFormat } from './soundFormat.js';
import { checkSoundOptions, type SoundOptions } from './soundOptions.js';

/** How a sound file was read. */
export interface SoundReading {
  /** How its samples are coded. */
  readonly coding: 'PCM' | 'float';
  /** Bits of a sample, from 16 to 64: 16, 24 or 32 of PCM, 32 or 64 of floating point. */
  readonly bits: number;
  /** How many channels the file has, 1 or more. */
  readonly channels: number;
  /** The channel that was read as the signal, counted from 0. */
  readonly signalChannel: number;
  /** The channel that was read as the supply, counted from 0; left out where none was named. */
  readonly supplyChannel?: number;
  /** The channel that was read as the second track, counted from 0; left out where none was named. */
  readonly secondChannel?: number;
  /** Samples per second, above 0. */
  readonly hertz: number;
  /** Samples that were read, 0 or more. */
  readonly rows: number;
  /** Samples that are no number, which are left out; 0 or more. */
  readonly withoutReading: number;
  /** Whether the file ends before the samples that it announces. */
  readonly isCut: boolean;
  /** Lowest and highest voltage that the input can show, V, from low to high. */
  readonly range: { readonly low: number; readonly high: number };
}

/** A sweep read from a sound file, and how it was read. */
export interface SoundRecording {
  /** The samples, in s and V. */
  readonly sweep: Sweep;
  /** The second track's voltages, V; left out where no channel was named. */
  readonly second?: Float64Array;
  /** How the file was read. */
  readonly reading: SoundReading;
}

/**
 * Reads a sweep that was recorded by a sound input: RIFF WAVE with PCM of 16, 24 or 32 bits or floating point. The voltage of a sample is
 * its fraction of full scale times the full scale's volts and the attenuation. Most sound inputs are coupled through a
 * capacitor; tell the score so (`coupling: 'ac'`).
 *
 * @throws InputError with the name of the file as `path`: `not-a-sound`, `no-format`, `unknown-coding`, `no-samples`, `one-sample`; for an
 * option, with its name: `missing`, `out-of-range`, `not-one-of`, `no-such-channel`.
 *
 * @example
 * const header = [0x46464952, 44, 0x45564157, 0x20746d66, 16, 0x10001, 8000, 16000, 0x100002, 0x61746164, 8];
 * const bytes = new Uint8Array(52);
 * const view = new DataView(bytes.buffer);
 * header.forEach((word, i) => view.setUint32(4 * i, word, true));
 * [0, 16384, -32768, 0].forEach((sample, i) => view.setInt16(44 + 2 * i, sample, true));
 * const options = { fullScale: 1.5, attenuation: 4, microphoneBias: 'off' } as const;
 * const { sweep } = readSound(bytes, options);
 * sweep.signal[1] // => 3
 * sweep.time[2] // => 0.00025
 */
export function readSound(bytes: Uint8Array, options: SoundOptions): SoundRecording {
  checkBytes(bytes, 'bytes');
  checkSoundOptions(options);
  const path = options.name ?? 'recording';
  const format = soundFormat(bytes, path);
  const { signalChannel = 0, supplyChannel, secondChannel } = options;
  const named = { signalChannel, supplyChannel, secondChannel };
  for (const [name, channel] of Object.entries(named)) checkChannel(channel, name, format);
  const volts = options.fullScale * options.attenuation;
  const channels = [signalChannel, supplyChannel, secondChannel].map((channel) =>
    channel === undefined ? undefined : samplesOf(bytes, format, channel, volts),
  );
  const frames = (format.end - format.start) / format.frame;
  const kept = readableSamples(channels, frames);
  if (kept.length < 2) refuseOne(path);
  const pick = (samples: Float64Array): Float64Array =>
    kept.length === frames ? samples : Float64Array.from(kept, (i) => samples[i]!);
  const [signal, supply, second] = channels.map((samples) => samples && pick(samples));
  const { coding, bits, hertz, isCut } = format;
  return {
    sweep: {
      time: Float64Array.from(kept, (i) => i / hertz),
      signal: signal!,
      ...(supply && { supply }),
      ...(kept.length < frames && { unread: unreadSamples(channels[0]!, kept, format.hertz) }),
    },
    ...(second && { second }),
    reading: {
      coding,
      bits,
      channels: format.channels,
      signalChannel,
      ...(supplyChannel !== undefined && { supplyChannel }),
      ...(secondChannel !== undefined && { secondChannel }),
      hertz,
      rows: kept.length,
      withoutReading: frames - kept.length,
      isCut,
      range: { low: -volts, high: volts },
    },
  };
}

/** The indexes of the samples that are numbers in every channel that is read. */
function readableSamples(
  channels: readonly (Float64Array | undefined)[],
  frames: number,
): Uint32Array {
  const kept = new Uint32Array(frames);
  let count = 0;
  for (let i = 0; i < frames; i++) {
    const isNumber = channels.every((samples) => !samples || Number.isFinite(samples[i]));
    if (isNumber) kept[count++] = i;
  }
  return kept.subarray(0, count);
}

/** Samples between the readable ones, several of one kind in a row as one entry. */
function unreadSamples(signal: Float64Array, kept: Uint32Array, hertz: number): UnreadRows[] {
  const unread: UnreadRows[] = [];
  let after = 0;
  for (let i = 0; i < signal.length; i++) {
    if (kept[after] === i) {
      after += 1;
      continue;
    }
    const reading = readingOf(signal[i]!);
    const last = unread.at(-1);
    if (last && last.reading === reading && last.after === after)
      unread[unread.length - 1] = { ...last, rows: last.rows + 1, end: i / hertz };
    else unread.push({ reading, rows: 1, after, start: i / hertz, end: i / hertz });
  }
  return unread;
}

function readingOf(sample: number): UnreadRows['reading'] {
  if (sample === Number.POSITIVE_INFINITY) return 'above-range';
  return sample === Number.NEGATIVE_INFINITY ? 'below-range' : 'none';
}

function checkChannel(channel: number | undefined, name: string, { channels }: SoundFormat): void {
  if (channel === undefined) return;
  if (Number.isInteger(channel) && channel >= 0 && channel < channels) return;
  throw new InputError(
    'no-such-channel',
    `options.${name}`,
    `${name} is ${channel}; the file has ${channels === 1 ? 'one channel, number 0' : `${channels} channels, numbered from 0 to ${channels - 1}`}.`,
  );
}

/** The voltages of one channel. */
function samplesOf(
  bytes: Uint8Array,
  { coding, bits, frame, start, end }: SoundFormat,
  channel: number,
  volts: number,
): Float64Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const read = sampleReader(view, coding, bits);
  const scale = coding === 'float' ? volts : volts / 2 ** (bits - 1);
  const samples = new Float64Array((end - start) / frame);
  const first = start + (channel * bits) / 8;
  for (let i = 0; i < samples.length; i++) samples[i] = read(first + i * frame) * scale;
  return samples;
}

/** Reads one sample, in steps of its coding or as a fraction of full scale. */
function sampleReader(view: DataView, coding: 'PCM' | 'float', bits: number) {
  if (coding === 'float') {
    return bits === 32
      ? (at: number) => view.getFloat32(at, true)
      : (at: number) => view.getFloat64(at, true);
  }
  if (bits === 16) return (at: number) => view.getInt16(at, true);
  if (bits === 32) return (at: number) => view.getInt32(at, true);
  return (at: number) => view.getUint16(at, true) + view.getInt8(at + 2) * 65_536;
}

function refuseOne(path: string): never {
  throw new InputError(
    'one-sample',
    path,
    'The sound file holds fewer than two samples; a sweep needs two or more.',
  );
}
