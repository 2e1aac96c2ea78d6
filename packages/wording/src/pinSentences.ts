import type { PinResult, Stop, TerminalPair, Undecided } from '@truesweep/core';

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
    const { wiper, ends, closedEnd, track, series } = found;
    const near =
      closedEnd === undefined ? '' : ` With the throttle closed the wiper is near ${closedEnd}.`;
    const inside = series === undefined ? '' : ` In series with the wiper lie ${series}.`;
    return `Wiper: ${wiper}. Ends of the track: ${ends.join(' and ')}, ${track} between them.${near}${inside}`;
  },
  contact: (terminals: TerminalPair, madeAt: Stop): string =>
    `${terminals.join(' and ')} are a contact that is made with the throttle ${madeAt}.`,
  apart: (terminals: readonly string[]): string =>
    `Neither track nor contact: ${terminals.join(', ')}.`,
  'broken-track': 'The track is broken: no path between its ends.',
  'lifted-wiper': (wiper: string, ends: TerminalPair, at: readonly Stop[]): string =>
    `${ends.join(' and ')} are the ends of the track; ${wiper} reaches neither with the throttle ${at.join(' and ')}: its wiper lifts.`,
  rheostat: (terminals: TerminalPair): string =>
    `${terminals.join(' and ')} are an adjustable resistor of two terminals; the bench circuit is for three.`,
  shorted: (joined: readonly TerminalPair[]): string =>
    `Joined at both stops: ${joined.map((pair) => pair.join(' and ')).join('; ')}.`,
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
  wanted: ([a, b]: TerminalPair, at: Stop): string =>
    `Still wanted: ${a} to ${b} with the throttle ${at}.`,
  contradictory: (terminals: readonly string[], at: Stop): string =>
    `The readings between ${terminals.join(', ')} with the throttle ${at} contradict each other: one is larger than both others together. Read them again.`,
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
