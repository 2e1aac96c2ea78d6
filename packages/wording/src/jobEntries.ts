import { say } from './say.js';
import { whole } from './whole.js';

/** What is said of a field of a job where a person fills it in. */
export interface JobEntryWords {
  /** What it is. */
  readonly label: string;
  /** Its unit; empty where it is a text. */
  readonly unit: string;
  /** A value as it may be typed. */
  readonly example: string;
}

/**
 * The fields that a job is filled in by, at a command line or asked one after the other.
 *
 * @example
 * jobEntries.track.example // => '5 kΩ'
 */
export const jobEntries = {
  title: { label: 'what the job is called', unit: '', example: 'Port engine, spring service' },
  sensor: { label: 'what the sensor is called', unit: '', example: 'Throttle position sensor' },
  track: {
    label: 'resistance of the track from end to end, by data sheet or ohmmeter',
    unit: 'Ω',
    example: '5 kΩ',
  },
  source: { label: 'voltage of the source that feeds it', unit: 'V', example: '5 V' },
  limiter: {
    label: 'the limiting resistor in the supply lead, in its place before anything is connected',
    unit: 'Ω',
    example: '1 kΩ',
  },
  instrument: { label: 'what records the signal', unit: '', example: 'Bench logger, channel 1' },
  inputResistance: {
    label: "resistance of the recorder's input, by its data sheet",
    unit: 'Ω',
    example: '10 MΩ',
  },
  closedAt: {
    label: 'where on the track the wiper stands at the closed stop, 0 % when left out',
    unit: '%',
    example: '10 %',
  },
  openAt: {
    label: 'where on the track the wiper stands at the open stop, 100 % when left out',
    unit: '%',
    example: '88 %',
  },
  trackTolerance: {
    label: "tolerance of the track's resistance, none when left out",
    unit: '%',
    example: '±20 %',
  },
  closedTolerance: {
    label: 'tolerance of the closed place, in parts of the track, none when left out',
    unit: '%',
    example: '±2 %',
  },
  openTolerance: {
    label: 'tolerance of the open place, in parts of the track, none when left out',
    unit: '%',
    example: '±3 %',
  },
  pullDown: {
    label: 'a deliberate load from signal to common, none when left out',
    unit: 'Ω',
    example: '1 MΩ',
  },
  resolution: {
    label: "the recorder's smallest step, found from the recording when left out",
    unit: 'V',
    example: '1 mV',
  },
} as const satisfies Record<string, JobEntryWords>;

/**
 * The question for a field.
 *
 * @param isNeeded Whether it may not be left out.
 *
 * @example
 * jobQuestion(jobEntries.limiter, true).endsWith('in Ω, such as 1 kΩ: ') // => true
 */
export function jobQuestion(entry: JobEntryWords, isNeeded: boolean): string {
  return whole(entry, 'entry', () => {
    const { label, unit, example } = entry;
    const skip = isNeeded ? '' : ' (Enter leaves it out)';
    const told = say`${label.charAt(0).toUpperCase()}${label.slice(1)}${skip}`;
    return say`${told}${unit === '' ? '' : say`, in ${unit}`}, such as ${example}: `;
  });
}

/**
 * Refused: answers that ended too early.
 *
 * @example
 * answersEndedSentence('the limiting resistor').includes('Nothing was written') // => true
 */
export function answersEndedSentence(label: string): string {
  return say`Nothing was written: the answers ended before this was told: ${label}. Begin again, or give it as an option.`;
}

/**
 * Refused: a file that is there.
 *
 * @example
 * fileIsThereSentence.includes('--overwrite') // => true
 */
export const fileIsThereSentence =
  'Nothing was written. There is a file of this name already; choose another name, or replace it with --overwrite.';

/**
 * Said when a job was written.
 *
 * @example
 * jobWrittenSentence('shelf.json').includes('--job shelf.json') // => true
 */
export function jobWrittenSentence(path: string): string {
  return say`The job was written to ${path}. Look at it: “truesweep expect --job ${path}” prints what a sound sensor must read on it, “truesweep plan --job ${path}” what each wrong connection would do.`;
}
