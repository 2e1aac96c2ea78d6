import {
  checkFields,
  checkReadable,
  checkSweep,
  type Fraction,
  InputError,
  type Recorder,
  type Sweep,
} from '@truesweep/core';
import {
  type DelimitedReading,
  delimitedReader,
  isSound,
  readSound,
  type SoundReading,
} from '@truesweep/recordings';
import { checkBytes, namedRules } from './checkInput.js';
import type { Job, JobRecording } from './job.js';
import { jobRecorder } from './jobRecorder.js';
import { shown } from './refusal.js';

/** A recording that was read as its job says. */
export interface ReadRecording {
  /** The samples, and what was noted of stretches. */
  readonly sweep: Sweep;
  /** How the file was read. */
  readonly reading: DelimitedReading | SoundReading;
  /** What is known of the recorder, from the job and from the file. */
  readonly recorder: Recorder;
}

/** What a job says of how a recording is read, and its file's name. */
export type HowRead = Pick<JobRecording, 'file' | 'text' | 'sound' | 'stretches'>;

/** How much of a text is read between two reports. */
const pieceBytes = 2 ** 22;

/**
 * Reads a recording as its job says: delimited text, or a sound recording.
 *
 * @param bytes The whole file.
 * @param recording The file's name, for errors, how it is read, and what was done when.
 * @param onRead Called with the part of the text that was read, 0 to 1, after each few megabytes.
 * @throws InputError as `readDelimited` and `readSound` do; for a sound recording `no-scale` where the job doesn't say what its full scale
 * is, and `no-coupling` where it doesn't say how the instrument's input is coupled.
 *
 * @example
 * const job = parseJob({
 *   version: 3,
 *   title: 'Spare sensor from the shelf',
 *   sensor: { kind: 'potentiometer', name: 'Outboard throttle sensor', track: 5000 },
 *   hookUp: { source: { volts: 5 }, limiter: 1000 },
 *   instrument: { name: 'Bench logger', inputResistance: '10M', resolution: '1 mV' },
 * });
 * const bytes = new TextEncoder().encode('t (s),U (V)\n0,0.5\n1,0.6\n');
 * const { sweep, recorder } = readJobRecording(bytes, { file: 'a.csv' }, job);
 * sweep.signal[1] // => 0.6
 * recorder // => { resolution: 0.001 }
 */
export function readJobRecording(
  bytes: Uint8Array,
  recording: HowRead,
  job: Job,
  onRead: (part: Fraction) => void = () => {},
): ReadRecording {
  checkBytes(bytes, 'bytes');
  if (typeof onRead !== 'function') {
    throw new InputError(
      'not-a-function',
      'onRead',
      `onRead is ${shown(onRead)}; it must be a function.`,
    );
  }
  checkHow(recording);
  if (isSound(bytes)) return readSoundAs(bytes, recording, job);
  const { file, text, stretches } = recording;
  const reader = delimitedReader({ ...text, name: file });
  for (let from = 0; from < bytes.length; from += pieceBytes) {
    reader.feed(bytes.subarray(from, from + pieceBytes));
    onRead(Math.min(1, (from + pieceBytes) / bytes.length));
  }
  const { sweep, reading } = reader.end();
  return { sweep: noted(sweep, stretches), reading, recorder: jobRecorder(job) };
}

/** Refuses a recording's entry that doesn't say how it is read. */
export function checkHow(recording: HowRead): void {
  checkFields(recording, 'recording', namedRules);
  const { text, sound } = recording;
  if (text !== undefined) checkNameless(text, 'recording.text');
  if (sound !== undefined) checkNameless(sound, 'recording.sound');
}

/** Reads a sound recording as its job says. */
export function readSoundAs(
  bytes: Uint8Array,
  { file, sound, stretches }: HowRead,
  job: Job,
): ReadRecording {
  const recorder = jobRecorder(job);
  if (!sound) {
    throw new InputError(
      'no-scale',
      file,
      'The file is a sound recording, which tells no voltages: say in the job, with the recording, “sound”: { "fullScale": …, "attenuation": …, "microphoneBias": "off" }.',
    );
  }
  if (recorder.coupling === undefined) {
    throw new InputError(
      'no-coupling',
      file,
      'The file is a sound recording: say in the job, with the instrument, whether its input is coupled through a capacitor ("coupling": "ac"), as most sound inputs are, or directly ("dc").',
    );
  }
  const { sweep, reading } = readSound(bytes, { ...sound, name: file });
  const { range } = reading;
  return { sweep: noted(sweep, stretches), reading, recorder: { range, ...recorder } };
}

/** Refuses options that are no group: their names and values are the reader's to check. */
function checkNameless(options: unknown, path: string): void {
  if (typeof options !== 'object' || options === null || Array.isArray(options)) {
    const wrong = `${path} is ${shown(options)}; it must be an object.`;
    throw new InputError('not-a-group', path, wrong);
  }
  checkReadable(options, path);
}

/** The samples with what was noted of stretches. */
export function noted(sweep: Sweep, stretches: JobRecording['stretches']): Sweep {
  return stretches ? checkSweep({ ...sweep, stretches }) : sweep;
}
