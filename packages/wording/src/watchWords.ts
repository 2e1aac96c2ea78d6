import {
  type AbruptDeparture,
  checkText,
  type DeliberateTest,
  type Finding,
  formatQuantity,
  listOf,
  type Missing,
} from '@truesweep/core';
import { findingLabels } from './findings.js';
import { missingText } from './liveWords.js';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * Words of the page on which a sweep is watched while it is recorded.
 *
 * @example
 * watchWords.stop // => 'Stop recording'
 */
export const watchWords = {
  sensor: 'Watch with this sensor',
  entries: 'Sensor, hook-up and instrument',
  source: 'Where do the samples come from?',
  serial: 'Serial port',
  serialHint:
    'A logger or controller that writes lines of numbers: a time and a reading each, the supply beside them if it is recorded.',
  noSerial:
    'This browser opens no serial port: browsers built on Chromium do. What works here: “truesweep live” on the command line, or a logger whose file you judge afterwards.',
  sound: 'Sound input',
  soundHint:
    'Microphone or line input. It is coupled through a capacitor: it shows abrupt departures only, no level and no travel.',
  noSound:
    'This browser opens no sound input for this page; record with a sound program and judge the WAV file.',
  sayFirst: 'Say first which sensor it is; then choose a source.',
  rate: 'Rate of the serial line',
  rateFound: 'found by itself',
  begin: 'Begin',
  back: 'Back',
  waiting: 'Waiting for the first lines …',
  waitingSound: 'Waiting for the browser to open the sound input …',
  portRefused: 'No port was chosen. Plug the recorder in and choose its port.',
  nothingReadable:
    'At none of the usual rates lines of numbers came. Look whether the recorder writes, whether another program has the port, or choose its rate.',
  notLines:
    'What comes at this rate is no text: most likely the rate is another. Stop, and choose another or have it found.',
  lost: 'The port is gone. Plug it in again: the recording goes on; the time between is left out as a gap.',
  soundRefused:
    'The sound input was not opened: allow this page to use it, and see that it is plugged in.',
  broken:
    'Watching broke off; the browser may be short of memory. What was recorded until then is kept.',
  noWorker:
    'Nothing can be watched: this browser starts no worker for this page. Use a newer browser, or “truesweep live” on the command line.',
  stop: 'Stop recording',
  trace: 'The last seconds',
  closed: 'closed',
  open: 'open',
  findings: 'Findings',
  noFindings: 'No finding so far.',
  doBetter: 'Do better',
  nothingToMend: 'Nothing spoils it.',
  stillMissing: 'Still missing',
  enough: 'Enough. Stop, and judge it.',
  passes: 'Clean looks at each tenth of the travel',
  noPasses: 'None yet: turn slowly from the closed stop to the open one and back.',
  noTravel: 'A sound input tells no travel: turn slowly open and back three times, then judge it.',
  tests: 'Deliberate tests: hold the shaft still, press when you begin and when you end',
  tone: 'Sound of the reading',
  toneHint: 'A tone that rises with the reading, and a click at a finding.',
  volume: 'Volume',
  asks: 'The lines don’t tell how to read them',
  readOtherwise: 'Read the lines otherwise',
  otherUnit:
    'The numbers can’t be in the unit that they were taken for. If they are in another one, say so: the recording then begins anew.',
  stopped: 'Recorded',
  judge: 'Judge it',
  keepResult: 'Keep its result on the shelf',
  judging: 'Judging …',
  save: 'Save the recording and its job',
  throwAway: 'Throw it away',
  throwAwaySure: 'Sure? Throw it away',
  another: 'Record another',
  nothingRecorded: 'Nothing was recorded.',
  notKept:
    'This browser keeps nothing for this page, as in a private window: a crash loses the recording. Save it when it is stopped.',
  full: 'There is no room left in this browser’s storage: what comes from now on is lost if the page crashes. Save it when it is stopped.',
} as const satisfies Record<string, string>;

/**
 * What is pressed while each deliberate test is made.
 *
 * @example
 * testButtons.warmed // => 'Warming the sensor'
 */
export const testButtons: Readonly<Record<DeliberateTest, string>> = {
  'harness-flexed': 'Flexing the harness',
  'housing-tapped': 'Tapping the housing',
  warmed: 'Warming the sensor',
};

/**
 * A finding as it stands on the trace of a running recording, in a few words.
 *
 * @example
 * findingMark(2, { start: 1.5, end: 1.51, depth: -2 }) // => '2 abrupt'
 */
export function findingMark(number: number, finding: Finding | AbruptDeparture): string {
  return whole(finding, 'finding', () => {
    if (!('kind' in finding)) return say`${number} abrupt`;
    const place = finding.unplaced
      ? ''
      : say` ${formatQuantity(finding.travel, '%', { digits: 2 })}`;
    return say`${number} ${findingLabels[finding.kind]}${place}`;
  });
}

/**
 * What a running recording still lacks, as a sentence.
 *
 * @example
 * stillMissingSentence([{ missing: 'snaps', count: 1 }]) // => 'Still missing: 1 snap: open, let go.'
 */
export function stillMissingSentence(missing: readonly Missing[]): string {
  listOf(() => {})(missing, 'missing');
  return missing.length === 0
    ? watchWords.enough
    : say`${watchWords.stillMissing}: ${missing.map(missingText).join('; ')}.`;
}

/**
 * How a running recording stands; quantities with their units.
 *
 * @example
 * const state = { seconds: '12 s', samples: 12_000, damagedLines: 1, gaps: 0 };
 * standingSentence(state) // => '12 s, 12000 samples; damaged lines left out: 1.'
 */
export function standingSentence(state: {
  readonly seconds: string;
  readonly samples: number;
  readonly damagedLines: number;
  readonly gaps: number;
}): string {
  return whole(state, 'state', () => {
    const { seconds, samples, damagedLines, gaps } = state;
    const damaged = damagedLines > 0 ? say`; damaged lines left out: ${damagedLines}` : '';
    const pauses = gaps > 0 ? say`; gaps: ${gaps}` : '';
    return say`${seconds}, ${samples} samples${damaged}${pauses}.`;
  });
}

/**
 * Said while the rate of a serial line is found out.
 *
 * @example
 * tryingSentence(9600) // => 'Trying 9600 baud …'
 */
export function tryingSentence(baud: number): string {
  return say`Trying ${baud} baud …`;
}

/**
 * At which rate a serial line is read.
 *
 * @example
 * readAtSentence(9600) // => 'Read at 9600 baud.'
 */
export function readAtSentence(baud: number): string {
  return say`Read at ${baud} baud.`;
}

/**
 * Why a serial port did not open, and what to look at.
 *
 * @example
 * portTroubleSentence('NetworkError').includes('another program') // => true
 */
export function portTroubleSentence(reason: string): string {
  checkText(reason, 'reason');
  return say`The port does not open (${reason}): look whether it is plugged in, and whether another program has it.`;
}

/**
 * How many clean looks each tenth of the travel had, in words, for those who don't see the picture.
 *
 * @param looks From the closed stop on.
 *
 * @example
 * looksSentence([2, 0], 6) // => 'Clean looks from closed to open: 2, 0; 6 of each are asked for.'
 */
export function looksSentence(looks: readonly number[], asked: number): string {
  listOf(() => {})(looks, 'looks');
  const counts = looks.map((count) => say`${count}`);
  return say`Clean looks from closed to open: ${counts.join(', ')}; ${asked} of each are asked for.`;
}

/**
 * Heads the picture of how often each tenth of the travel was seen.
 *
 * @param asked How many looks are asked for; left out until it is known.
 *
 * @example
 * passesTitle(6) // => 'Clean looks at each tenth of the travel, of 6 asked for'
 */
export function passesTitle(asked?: number): string {
  return asked === undefined ? watchWords.passes : say`${watchWords.passes}, of ${asked} asked for`;
}

/**
 * Offers a recording that is still kept.
 *
 * @param isWhole Whether it was stopped; one that was not broke off with its page.
 *
 * @example
 * offeredSentence('10:42', false) // => 'A recording of 10:42 was not finished.'
 */
export function offeredSentence(at: string, isWhole: boolean): string {
  checkText(at, 'at');
  return isWhole
    ? say`A recording of ${at} was neither judged nor saved.`
    : say`A recording of ${at} was not finished.`;
}
