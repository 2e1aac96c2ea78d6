import { InputError, type InputErrorCode } from '@truesweep/core';
import { checkBytes } from '../shown.js';

/** How the samples of a sound file are written. */
export interface SoundFormat {
  readonly coding: 'PCM' | 'float';
  readonly bits: number;
  readonly channels: number;
  /** Samples per second of each channel. */
  readonly hertz: number;
  /** Bytes that one sample of all channels takes. */
  readonly frame: number;
  /** The first byte of the samples, and the byte after the last whole frame. */
  readonly start: number;
  readonly end: number;
  /** Whether the file ends before the samples that it announces. */
  readonly isCut: boolean;
}

const pcm = 1;
const float = 3;
const extensible = 0xfffe;
/** A writer that was stopped, or that wrote to a pipe, leaves one of these for the size of its samples. */
const unknownSizes = [0, 0xffffffff];

/** Whether a file is a sound recording, by its first bytes. */
export function isSound(bytes: Uint8Array): boolean {
  checkBytes(bytes, 'bytes');
  return textAt(bytes, 0) === 'RIFF' && textAt(bytes, 8) === 'WAVE';
}

/**
 * Reads the description of a RIFF WAVE file: chunks of a name, a size and an even number of bytes, of which `fmt ` and `data` count (IBM and
 * Microsoft, Multimedia Programming Interface and Data Specifications 1.0, 1991; from memory).
 */
export function soundFormat(bytes: Uint8Array, path: string): SoundFormat {
  if (!isSound(bytes)) refuse('not-a-sound', path, 'The file is no RIFF WAVE sound recording.');
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let format: Omit<SoundFormat, 'start' | 'end' | 'isCut'> | undefined;
  for (let at = 12; at + 8 <= bytes.length; ) {
    const [name, size, start] = [textAt(bytes, at), view.getUint32(at + 4, true), at + 8];
    if (name === 'fmt ') format = readFormat(view, start, size, path);
    if (name === 'data') {
      if (!format) refuse('no-format', path, 'The samples come before their description.');
      return { ...format, ...extent(start, size, bytes.length, format.frame) };
    }
    at = start + size + (size % 2);
  }
  return refuse('no-samples', path, 'The sound file holds no samples.');
}

function textAt(bytes: Uint8Array, at: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + 4));
}

function readFormat(view: DataView, start: number, size: number, path: string) {
  if (size < 16 || start + size > view.byteLength) {
    refuse('no-format', path, "The description of the sound file's samples is cut short.");
  }
  const given = view.getUint16(start, true);
  const isLong = given === extensible && size >= 40;
  const tag = isLong ? view.getUint16(start + 24, true) : given;
  const channels = view.getUint16(start + 2, true);
  const hertz = view.getUint32(start + 4, true);
  const frame = view.getUint16(start + 12, true);
  const bits = view.getUint16(start + 14, true);
  const isPcm = tag === pcm && [16, 24, 32].includes(bits);
  const isFloat = tag === float && [32, 64].includes(bits);
  if (!isPcm && !isFloat) {
    const found = tag === pcm || tag === float ? `${bits} bits` : `coding ${tag}`;
    refuse(
      'unknown-coding',
      path,
      `The samples are in ${found}; PCM of 16, 24 or 32 bits and floating point of 32 or 64 bits are read. Export the recording in one of these.`,
    );
  }
  if (channels === 0 || hertz === 0 || frame !== (channels * bits) / 8) {
    refuse(
      'no-format',
      path,
      `The description contradicts itself: ${channels} channels of ${bits} bits at ${hertz} Hz in frames of ${frame} bytes.`,
    );
  }
  return { coding: isPcm ? ('PCM' as const) : ('float' as const), bits, channels, hertz, frame };
}

function extent(start: number, size: number, length: number, frame: number) {
  const isOpen = unknownSizes.includes(size);
  const stop = isOpen ? length : Math.min(length, start + size);
  const end = stop - ((stop - start) % frame);
  return { start, end, isCut: isOpen || start + size > length };
}

function refuse(code: InputErrorCode, path: string, message: string): never {
  throw new InputError(code, path, message);
}
