import type { WindingAdvice, WindingUnsaid } from '@truesweep/core';
import { betterMeter, measureLeads, readAgain, replace } from './sharedReadingWords.js';

/**
 * What to do next of a winding, by the advice.
 *
 * @example
 * windingAdvice['let-it-cool'] // => 'Were it warmer than stated it would be right: let it lie until it is as warm as its surroundings, then read again.'
 */
export const windingAdvice: Readonly<Record<WindingAdvice, string>> = {
  'let-it-cool':
    'Were it warmer than stated it would be right: let it lie until it is as warm as its surroundings, then read again.',
  'know-temperature':
    'How warm the winding is decides: let it lie longer, with a thermometer at it.',
  'better-meter': betterMeter,
  'measure-leads': measureLeads,
  'read-again': readAgain,
  'replace-sensor': replace,
};

/**
 * What a pass does not say of a winding.
 *
 * @example
 * windingUnsaid.magnet // => 'Its magnet.'
 */
export const windingUnsaid: Readonly<Record<WindingUnsaid, string>> = {
  magnet: 'Its magnet.',
  gap: 'Its gap.',
  polarity: 'Its polarity.',
  'shorted-turn':
    'One shorted turn: that moves the resistance by one part in as many as there are turns.',
};
