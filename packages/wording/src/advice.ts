import type { Advice } from '@truesweep/core';
import { say } from './say.js';
import { whole } from './whole.js';

/** Formatted numbers that an advice may name. */
export interface AdviceNumbers {
  /** Longest sample interval that is short enough, such as `7.5 ms`. */
  readonly interval: string;
  /** How many returns to closed are needed, such as `3`. */
  readonly returns: string;
  /** Twice the standard uncertainty that an instrument may have at the most, such as `12 mV`. */
  readonly uncertainty: string;
  /** Largest visibility limit that is small enough, such as `5 %`. */
  readonly visible: string;
}

/**
 * What to do next, in a sentence.
 *
 * @example
 * const numbers = { interval: '7.5 ms', returns: '3', visible: '5 %', uncertainty: '12 mV' };
 * adviceSentences['record-faster'](numbers).includes('every 7.5 ms or faster') // => true
 */
export const adviceSentences: Readonly<Record<Advice, (numbers: AdviceNumbers) => string>> = {
  refit: () => 'It may go back: fit it as the service manual says and check its closed reading.',
  'replace-sensor': () => 'If the leads and the plug are good, replace the sensor.',
  'prove-connection': () =>
    'Prove leads and plug: measure each with an ohmmeter, then hold the shaft still and flex the harness while you record.',
  'remove-interference': () =>
    'Lead the wires away from mains and ignition, and tighten every terminal and screen.',
  'check-wiring': () =>
    'Find the terminals with an ohmmeter, then check supply, limiter and ground against the job.',
  'check-adjustment': () =>
    "Check the throttle's stops, how the sensor sits on its shaft, and that the job states this type of sensor.",
  'state-tolerances': () =>
    'State the tolerances of source, limiter, track and stops: without them an expected window has no width, and no end reading can be judged by it.',
  'record-more-returns': (numbers) =>
    whole(
      numbers,
      'numbers',
      () =>
        say`Record ${numbers.returns} or more returns to closed, each reached the same way, to have the closed reading judged.`,
    ),
  'record-again': () => 'Record again: slowly from stop to stop and back, several times.',
  'record-faster': (numbers) =>
    whole(
      numbers,
      'numbers',
      () =>
        say`Record again, without gaps, at a sample every ${numbers.interval} or faster: a scope or a logger, not a meter's display.`,
    ),
  'record-without-smoothing': () =>
    "Record again with the recorder's smoothing, averaging or filter switched off: it hides what is shorter.",
  'record-quieter': (numbers) =>
    whole(
      numbers,
      'numbers',
      () =>
        say`Record again with less noise or a finer range, so that a departure of ${numbers.visible} of the span can be seen.`,
    ),
  'record-whole-strokes': () =>
    'Record again from the closed stop to the open stop and back, with a rest at each.',
  'couple-directly': () =>
    'Record again with the recorder coupled directly (DC): through a capacitor no recording can pass a sensor.',
  'change-range': () => 'Record again on a range of the recorder that holds both end readings.',
  'record-every-reading': () =>
    'Record again so that every row holds a reading, on a range from below ground to above the source: a wiper that lifts is what leaves rows without one. Where the instrument wrote “over range”, tell its range.',
  'complete-recording': () =>
    'First record the rest: three slow sweeps from stop to stop and back, with rests, and three snaps shut, with an instrument that sees each place on every one.',
  'finer-instrument': (numbers) =>
    whole(
      numbers,
      'numbers',
      () =>
        say`Read the ends with a better instrument, true to ${numbers.uncertainty} or less, and tell the job how true it is: the window is too narrow for this one.`,
    ),
  'tighten-criteria': () =>
    'Judge by tighter limits: by those of the job no sensor can pass, since they would let a fault through.',
  'tell-units': () =>
    'Say in which unit the column is written (the instrument’s manual or its heading tells; one reading compared with a meter proves it), and judge the recording again.',
};
