import { say } from './say.js';

/**
 * Words of judging recordings in a browser, where no page is needed.
 *
 * @example
 * checkSweepWords.untitled // => 'Position sensor on the bench'
 */
export const checkSweepWords = {
  job: 'The job',
  jobTitle: 'What this job is called',
  jobTitleHint: 'Such as the machine and the date; it heads the report.',
  untitled: 'Position sensor on the bench',
  sensorName: 'Position sensor',
  instrumentName: 'Recorder',
  recorder: 'The recorder',
  testTimes: 'When the deliberate tests were made',
  twoJobs: 'There are two jobs among the files; choose one of them with its recordings.',
  unreadable:
    'This file can no longer be read: it was changed, moved or removed since it was chosen. Choose it again.',
  reportAlone: 'A report is opened by itself; choose it without other files.',
  brokenSamples:
    'The samples that the report keeps of this recording are damaged; open the report as it was written.',
  unsaid: 'not said',
  noFiles: 'No file was chosen; choose one recording or more.',
} as const satisfies Record<string, string>;

/**
 * Said of a job that was opened without a recording.
 *
 * @example
 * jobOpenedSentence('Spare sensor') // => 'The job “Spare sensor” is open. Choose its recordings.'
 */
export function jobOpenedSentence(title: string): string {
  return say`The job “${title}” is open. Choose its recordings.`;
}

/**
 * By which job recordings are judged.
 *
 * @example
 * judgedByJobSentence('Spare sensor') // => 'Recordings are judged by the job “Spare sensor”.'
 */
export function judgedByJobSentence(title: string): string {
  return say`Recordings are judged by the job “${title}”.`;
}

/**
 * Said of a report that was opened: where its verdicts are from.
 *
 * @example
 * reportOpenedSentence('2026-05-04') // => 'Opened from the report written 2026-05-04.'
 */
export function reportOpenedSentence(writtenAt: string): string {
  return say`Opened from the report written ${writtenAt}.`;
}

/**
 * What goes on with a recording.
 *
 * @example
 * progressSentence('port.csv', 'judging') // => 'Judging port.csv …'
 */
export function progressSentence(name: string, step: 'reading' | 'judging'): string {
  return say`${step === 'reading' ? 'Reading' : 'Judging'} ${name} …`;
}

/** When a deliberate test began and ended, on the recording's clock. */
export type TestTimeEntry =
  | 'flexedFrom'
  | 'flexedTo'
  | 'tappedFrom'
  | 'tappedTo'
  | 'warmedFrom'
  | 'warmedTo';

/**
 * When each deliberate test was made.
 *
 * @example
 * testTimeLabels.flexedFrom // => 'Harness flexed from'
 */
export const testTimeLabels: Readonly<Record<TestTimeEntry, string>> = {
  flexedFrom: 'Harness flexed from',
  flexedTo: 'Harness flexed until',
  tappedFrom: 'Housing tapped from',
  tappedTo: 'Housing tapped until',
  warmedFrom: 'Sensor warmed from',
  warmedTo: 'Sensor warmed until',
};

/**
 * What the time of a deliberate test means, in one line.
 *
 * @example
 * testTimeHint // => "On the recording's own clock; leave both empty if it was not done."
 */
export const testTimeHint: string =
  "On the recording's own clock; leave both empty if it was not done.";

/**
 * Said where only one end of a range was given, or they are in the wrong order.
 *
 * @example
 * pairSentence('Harness flexed from', 'Harness flexed until') // => '“Harness flexed from” and “Harness flexed until” belong together: give both, the lower first, or none.'
 */
export function pairSentence(from: string, until: string): string {
  return say`“${from}” and “${until}” belong together: give both, the lower first, or none.`;
}

/**
 * Said where one entry is missing that another one asks for.
 *
 * @example
 * neededWithSentence('Sampled every', 'A sample is', 'drawn between fewer') // => '“Sampled every” is needed where “A sample is” says “drawn between fewer”.'
 */
export function neededWithSentence(needed: string, label: string, choice: string): string {
  return say`“${needed}” is needed where “${label}” says “${choice}”.`;
}

/** What a recorder has besides its input resistance. */
export type RecorderEntry =
  | 'rangeLow'
  | 'rangeHigh'
  | 'readingDoubt'
  | 'sampling'
  | 'sampledEvery'
  | 'coupling'
  | 'resolution';

/**
 * What each entry of a recorder is called.
 *
 * @example
 * recorderLabels.resolution // => 'Smallest step of a reading'
 */
export const recorderLabels: Readonly<Record<RecorderEntry, string>> = {
  rangeLow: 'Range from',
  rangeHigh: 'Range to',
  readingDoubt: 'How far a reading may be off (one standard deviation)',
  sampling: 'A sample is',
  sampledEvery: 'True samples every',
  coupling: 'Input coupled',
  resolution: 'Smallest step of a reading',
};

/**
 * What each entry of a recorder means, in one line.
 *
 * @example
 * recorderHints.resolution // => 'From its data; leave empty to have it found in the recording.'
 */
export const recorderHints: Readonly<Record<RecorderEntry, string>> = {
  rangeLow: 'The lowest voltage that it can show; leave both empty if they are not known.',
  rangeHigh: 'The highest voltage that it can show.',
  readingDoubt: 'From its data, half of a limit of error; leave empty if it is not known.',
  sampling: 'How it forms one sample; most scopes and loggers pick it at a moment.',
  sampledEvery: 'The interval of the samples that the others were drawn between.',
  coupling: 'Through a capacitor no sensor can pass: the level is lost. A sound input must say it.',
  resolution: 'From its data; leave empty to have it found in the recording.',
};

/**
 * Words of a trace that can be zoomed.
 *
 * @example
 * traceWords.whole // => 'Whole sweep'
 */
export const traceWords = {
  trace: (name: string): string =>
    say`Trace of ${name}: arrow keys move it, plus and minus zoom time, star and slash zoom voltage, Home shows it whole, n and p go to the next and previous finding`,
  how: 'Drag to move, pinch or turn the wheel to zoom (with Shift: voltage), tap twice to see all.',
  time: 'time',
  volts: 'volts',
  closer: '+ time: closer',
  farther: '− time: farther',
  closerVolts: '+ volts: closer',
  fartherVolts: '− volts: farther',
  whole: 'Whole sweep',
  overlay: 'Lay passes over one another',
  previous: 'Previous finding',
  next: 'Next finding',
  findingOf: (number: number, count: number): string =>
    number === 0 ? say`${count} findings` : say`Finding ${number} of ${count}`,
} as const;
