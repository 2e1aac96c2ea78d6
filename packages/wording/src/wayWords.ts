import type { RefitCheck, RefitOutcome } from '@truesweep/core';
import type { Caution } from './cautions.js';
import { say } from './say.js';

/** The steps of the guided way, in their order. */
export type WayStep =
  | 'bench'
  | 'terminals'
  | 'terminals-open'
  | 'hook-up'
  | 'readings'
  | 'instrument'
  | 'sweep'
  | 'verdict'
  | 'refit';

/**
 * What each step of the guided way is called.
 *
 * @example
 * wayStepLabels.sweep // => 'Record the sweep'
 */
export const wayStepLabels: Readonly<Record<WayStep, string>> = {
  bench: 'What is on the bench?',
  terminals: 'Find the terminals, closed',
  'terminals-open': 'Find the terminals, open',
  'hook-up': 'Plan the hook-up',
  readings: 'Work out the readings',
  instrument: 'Choose the instrument',
  sweep: 'Record the sweep',
  verdict: 'Judge it and keep the record',
  refit: 'After refitting',
};

/**
 * What is to be done in each step.
 *
 * @example
 * wayStepTasks.terminals.startsWith('Unplug the sensor') // => true
 */
export const wayStepTasks: Readonly<Record<WayStep, string>> = {
  bench: 'The wiring diagram tells. Which is it?',
  terminals:
    'Unplug the sensor. Call its terminals A, B and C as they lie. With the throttle closed, what does the ohmmeter read between each two?',
  'terminals-open': 'Hold the throttle open at its stop. What does the ohmmeter read now?',
  'hook-up':
    'What feeds the sensor, and through which resistor? Connect resistor, sensor and instrument, and only then the supply.',
  readings: 'Hold the throttle at each stop. Does the meter read what stands here?',
  instrument: 'How narrow a worn spot do you want to find, and how fast does your hand sweep?',
  sweep:
    'Start the recorder and do this in its order; of the last three note when they began and ended. Then save the recording as a file.',
  verdict: 'Choose the recording.',
  refit:
    'Refit the sensor as the service manual says. What does it read at its connector, with everything plugged in?',
};

/**
 * Which cautions belong to each step.
 *
 * @example
 * wayStepCautions.terminals // => ['unplugged', 'static', 'not-hall']
 */
export const wayStepCautions: Readonly<Record<WayStep, readonly Caution[]>> = {
  bench: ['manual-first'],
  terminals: ['unplugged', 'static', 'not-hall'],
  'terminals-open': [],
  'hook-up': ['limiter', 'battery-and-fuel'],
  readings: ['fingers'],
  instrument: [],
  sweep: ['fingers'],
  verdict: ['starting-points', 'electronic-throttle'],
  refit: ['snaps-shut', 'battery-and-fuel', 'manual-first'],
};

/** What may lie on the bench. */
export type BenchKind =
  | 'throttle'
  | 'temperature'
  | 'pressure'
  | 'two-state'
  | 'winding'
  | 'contactless';

/**
 * What may lie on the bench.
 *
 * @example
 * benchKindLabels.winding // => 'A coil: crank sensor, injector, ignition'
 */
export const benchKindLabels: Readonly<Record<BenchKind, string>> = {
  throttle: 'A throttle’s potentiometer',
  temperature: 'A temperature sensor',
  pressure: 'A pressure sensor',
  'two-state': 'A switch: lean angle, side stand',
  winding: 'A coil: crank sensor, injector, ignition',
  contactless: 'A Hall or inductive position sensor',
};

/** What is done while the recorder runs. */
export type SweepTask =
  | 'rest'
  | 'passes'
  | 'snaps'
  | 'harness-flexed'
  | 'housing-tapped'
  | 'warmed';

/**
 * What is done while the recorder runs, in its order.
 *
 * @example
 * sweepTaskLabels.rest // => 'Hold the throttle closed for half a second'
 */
export const sweepTaskLabels: Readonly<Record<SweepTask, string>> = {
  rest: 'Hold the throttle closed for half a second',
  passes: 'Open it slowly to the stop, rest, close it as slowly, rest: three times',
  snaps: 'Open it and let it snap shut: three times',
  'harness-flexed': 'Hold the shaft still and flex the harness and its plug',
  'housing-tapped': 'Hold the shaft still and tap the housing with a finger',
  warmed: 'Warm the sensor with your hand or a lamp, then sweep once more',
};

/** The entries after refitting. */
export type RefitEntry =
  | 'closedLow'
  | 'closedHigh'
  | 'statedReference'
  | 'coldReading'
  | 'coldReference'
  | 'warmReading'
  | 'warmReference'
  | 'learnedSignal';

/**
 * What each entry after refitting is called.
 *
 * @example
 * refitLabels.coldReading // => 'Closed reading, engine cold'
 */
export const refitLabels: Readonly<Record<RefitEntry, string>> = {
  closedLow: 'Lowest closed reading that is allowed',
  closedHigh: 'Highest closed reading that is allowed',
  statedReference: 'Reference that they are stated for',
  coldReading: 'Closed reading, engine cold',
  coldReference: 'Reference beside it, engine cold',
  warmReading: 'Closed reading, engine warm',
  warmReference: 'Reference beside it, engine warm',
  learnedSignal: 'Closed signal learned before, in percent of the reference',
};

/**
 * What each entry after refitting means, in one line.
 *
 * @example
 * refitHints.warmReading // => 'The same once it is warm; leave empty until then.'
 */
export const refitHints: Readonly<Record<RefitEntry, string>> = {
  closedLow: "From the machine's service manual.",
  closedHigh: 'From the same place.',
  statedReference: 'Often 5 V.',
  coldReading: "At the connector, signal to the sensor's ground; leave empty until then.",
  coldReference: 'Read with the same meter, supply to ground.',
  warmReading: 'The same once it is warm; leave empty until then.',
  warmReference: 'Again with the same meter.',
  learnedSignal: 'From a scan tool before the work; leave empty if it is not known.',
};

/** Questions after refitting that are answered with a tick. */
export type RefitAnswer = 'asksRelearn' | 'relearned' | 'snapsShut';

/**
 * Questions after refitting that are answered with a tick.
 *
 * @example
 * refitAnswers.snapsShut // => 'The throttle snaps fully shut by itself at every handlebar or pedal position'
 */
export const refitAnswers: Readonly<Record<RefitAnswer, string>> = {
  asksRelearn: 'The service manual asks for the closed position to be learned anew',
  relearned: 'It was learned anew',
  snapsShut: 'The throttle snaps fully shut by itself at every handlebar or pedal position',
};

/**
 * What is checked after refitting.
 *
 * @example
 * refitCheckLabels['snaps-shut'] // => 'Throttle snaps shut'
 */
export const refitCheckLabels: Readonly<Record<RefitCheck['code'], string>> = {
  'closed-ratio': 'Closed signal of the reference, cold',
  'closed-ratio-warm': 'Closed signal of the reference, warm',
  'relearn-closed': 'Closed position learned anew',
  'snaps-shut': 'Throttle snaps shut',
};

/**
 * How a check after refitting stands.
 *
 * @example
 * refitOutcomeLabels['to-do'] // => 'to do'
 */
export const refitOutcomeLabels: Readonly<Record<RefitOutcome, string>> = {
  met: 'met',
  'not-met': 'not met',
  'to-do': 'to do',
};

/**
 * Words of the guided way.
 *
 * @example
 * wayWords.next // => 'On to'
 */
export const wayWords = {
  steps: 'Steps',
  bench: 'On the bench',
  forThrottle: 'The steps that follow are for it.',
  byReadings: 'It is judged by single readings:',
  contactless:
    'It is no potentiometer: an active part sits between its terminals. Its ohms mean nothing and change when the meter’s leads are changed over, and a limiting resistor starves it.',
  iceAndBoiling: 'In ice and boiling water',
  temperatureNow: 'What it must read now',
  fitCurve: 'Fit a curve',
  pressureSensor: 'Port open and pumped',
  twoStates: 'In both states',
  coil: 'At its temperature',
  potentiometerOrNot: 'Is it a potentiometer?',
  stepOf: (number: number, count: number): string => say`Step ${number} of ${count}`,
  allSteps: 'all steps',
  next: 'On to',
  back: 'Back to',
  tasks: 'What was done',
  cautions: 'Mind',
  keep: 'Keep or resume',
  saveWay: 'Save all of it as a file',
  openWay: 'Go on from a saved file',
  forget: 'Forget all of it',
  kept: 'What you enter is kept in this browser alone.',
  notKept:
    'This browser keeps nothing for this page: its storage is blocked or full. Save all of it as a file before you leave.',
  newerKept:
    'This browser holds what a newer version of this page kept. It is left as it is, and nothing entered here is kept: save all of it as a file, or load the page anew.',
  noWindow:
    "Enter the lowest and the highest closed reading and their reference from your machine's service manual; nothing is checked against an example.",
  notWay: 'This file holds no saved way; choose one that was saved on this page.',
  newerWay: 'This file was saved by a newer version of this page; nothing of it was read.',
  stops: 'Reading allowed',
  atConnector: 'Read at the connector',
  checks: 'Checks after refitting',
  check: 'Check',
  limits: 'Limits',
  measured: 'Measured',
  outcome: 'Outcome',
  allMet: 'Every check after refitting is met.',
  notMet: 'Not every check is met: do not run the engine yet. See the rows below.',
  toDo: 'Not all is checked yet. What is to do stands below.',
} as const;

/**
 * Says what the terminals' readings tell the later steps.
 *
 * @example
 * goesOnSentence('5 kΩ', '3 %', '80 %') // => 'Goes on to the next steps: track 5 kΩ, wiper at 3 % closed and 80 % open.'
 */
export function goesOnSentence(track: string, closed: string, open: string): string {
  return say`Goes on to the next steps: track ${track}, wiper at ${closed} closed and ${open} open.`;
}

/**
 * Offers to take over what the terminals' readings tell of the track.
 *
 * @example
 * takeOverSentence('5 kΩ', '3 %', '80 %') // => 'Take over: track 5 kΩ, wiper at 3 % closed and 80 % open'
 */
export function takeOverSentence(track: string, closed: string, open: string): string {
  return say`Take over: track ${track}, wiper at ${closed} closed and ${open} open`;
}
