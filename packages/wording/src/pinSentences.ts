import {
  listOf,
  type PinResult,
  type Stop,
  type TerminalPair,
  type Undecided,
} from '@truesweep/core';
import { pairRule, texts } from './rules.js';
import { say } from './say.js';
import { whole } from './whole.js';

type NotEnough = Extract<PinResult, { kind: 'not-enough-readings' }>['reason'];
type NotOne = Extract<PinResult, { kind: 'not-a-potentiometer' }>['reason'];

/**
 * What ohmmeter readings between a sensor's terminals say.
 *
 * @example
 * pinSentences.wanted(['A', 'C'], 'open') // => 'Still wanted: A to C with the throttle open.'
 */
export const pinSentences = {
  potentiometer: 'The sensor is a potentiometer.',
  'two-tracks': 'The sensor has two tracks.',
  track: (found: {
    readonly wiper: string;
    readonly ends: TerminalPair;
    readonly closedEnd: string | undefined;
    readonly track: string;
    readonly series?: string;
  }): string => {
    return whole(found, 'found', () => {
      const { wiper, ends, closedEnd, track, series } = found;
      const near =
        closedEnd === undefined
          ? ''
          : say` With the throttle closed the wiper is near ${closedEnd}.`;
      const inside =
        series === undefined
          ? ''
          : say` There are ${series} between the track and the wiper's pin.`;
      return say`Wiper: ${wiper}. Ends of the track: ${both(ends)}, ${track} between them.${near}${inside}`;
    });
  },
  contact: (terminals: TerminalPair, madeAt: Stop): string =>
    say`${both(terminals)} are a contact that is made with the throttle ${madeAt}.`,
  apart: (terminals: readonly string[]): string =>
    say`Neither track nor contact: ${joined(terminals, ', ')}.`,
  'broken-track': 'The track is broken: no path between its ends.',
  'lifted-wiper': (wiper: string, ends: TerminalPair, at: readonly Stop[]): string =>
    say`${both(ends)} are the ends of the track; ${wiper} reaches neither with the throttle ${joined(at, ' and ')}: its wiper lifts.`,
  rheostat: (terminals: TerminalPair): string =>
    say`${both(terminals)} are an adjustable resistor of two terminals; the bench circuit is for three.`,
  shorted: (pairs: readonly TerminalPair[]): string => {
    listOf(pairRule)(pairs, 'pairs');
    return say`Joined at both stops: ${pairs.map(both).join('; ')}.`;
  },
  'idle-switch': 'Contacts only: a throttle switch, not a position sensor.',
  'not-a-potentiometer': {
    'no-connection':
      'Nothing conducts. This is no potentiometer that can be tested here; a Hall or inductive sensor looks like this.',
    constant: 'One resistance that does not follow the throttle: this is no potentiometer.',
    'unlike-a-track': 'The resistances follow the throttle, but not as a track and its wiper do.',
  } satisfies Record<NotOne, string>,
  'not-enough-readings': {
    missing: 'More than one arrangement fits: readings are missing.',
    'no-movement':
      'Nothing changed beyond the error of the meter: move the throttle from stop to stop.',
    'several-fit': 'More than one arrangement fits these readings: a finer meter may part them.',
  } satisfies Record<NotEnough, string>,
  wanted: (pair: TerminalPair, at: Stop): string => {
    pairRule(pair, 'pair');
    return say`Still wanted: ${pair.join(' to ')} with the throttle ${at}.`;
  },
  contradictory: (terminals: readonly string[], at: Stop): string =>
    say`The readings between ${joined(terminals, ', ')} with the throttle ${at} contradict each other: one is larger than both others together. Read them again.`,
} as const;

/**
 * What no ohmmeter reading decides.
 *
 * @example
 * undecidedSentences['fed-end'].includes('wiring diagram') // => true
 */
export const undecidedSentences: Readonly<Record<Undecided, string>> = {
  'fed-end': 'Which end is fed no ohmmeter tells: see the wiring diagram.',
  'closed-end': 'Which end the wiper is near when closed these readings do not tell.',
  'single-tracks': 'How the two tracks share the resistance these readings do not tell.',
};

function joined(names: readonly string[], between: string): string {
  texts(names, 'names');
  return names.join(between);
}

function both(pair: TerminalPair): string {
  pairRule(pair, 'pair');
  return pair.join(' and ');
}
