import type { TwoStateAdvice, TwoStateUnsaid } from '@truesweep/core';
import {
  betterMeter,
  measureLeads,
  measureSupply,
  readAgain,
  replace,
} from './sharedReadingWords.js';

/**
 * What to do next of a sensor of two states, by the advice.
 *
 * @example
 * twoStateAdvice['read-rest'] // => 'Read it at rest.'
 */
export const twoStateAdvice: Readonly<Record<TwoStateAdvice, string>> = {
  'read-rest': 'Read it at rest.',
  'read-operated': 'Read it operated.',
  'read-operated-other-way': 'Read it operated the other way: leaning to the other side.',
  'read-back-at-rest': 'Read it back at rest.',
  'read-key-cycled': 'Read it after the key was off and on again.',
  'read-change-angle': 'Read the angle at which it changes.',
  'states-swapped':
    "Each state reads as the other should: compare the windows, the plug's terminals and how it is mounted with the manual.",
  'hold-longer':
    'Operate it all the way, beyond the point at which it changes, and hold it there for a second or more: such sensors are damped (from memory).',
  'cycle-key': 'Switch the key off and on, and ask the manual whether it latches.',
  'better-meter': betterMeter,
  'measure-supply': measureSupply,
  'measure-leads': measureLeads,
  'better-angle': 'The angle decides: read it with a protractor or a level.',
  'read-again': readAgain,
  'replace-sensor': replace,
};

/**
 * What a pass does not say of a sensor of two states.
 *
 * @example
 * twoStateUnsaid.vibration // => 'How it behaves on a machine that shakes.'
 */
export const twoStateUnsaid: Readonly<Record<TwoStateUnsaid, string>> = {
  vibration: 'How it behaves on a machine that shakes.',
  bounce: 'Whether it bounces when it changes: record it.',
  'under-load': 'Whether its contact carries its current.',
  'change-angle': 'At which angle it changes.',
  'change-angle-other-way':
    'At which angle it changes in the other direction: the angle was read in one only.',
  'other-way': 'Whether it answers to the other direction.',
};
