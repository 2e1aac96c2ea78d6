import type { ThermistorAdvice, ThermistorUnsaid } from '@truesweep/core';
import {
  betterMeter,
  measureSupply,
  plug,
  readAgain,
  refit,
  replace,
} from './sharedReadingWords.js';

/**
 * What to do next of a thermistor, by the advice.
 *
 * @example
 * thermistorAdvice['state-tolerances'] // => 'Say how far a sound sensor may be off: without that no reading can be judged.'
 */
export const thermistorAdvice: Readonly<Record<ThermistorAdvice, string>> = {
  refit,
  'read-again': readAgain,
  'replace-sensor': replace,
  'state-tolerances':
    'Say how far a sound sensor may be off: without that no reading can be judged.',
  'prove-pull-up':
    'Another pull-up would explain these voltages: put a known resistor in the place of the sensor, or read its resistance unplugged.',
  'read-by-ohmmeter':
    'The current through it warms it beyond the temperatures that are known of it: read its resistance by an ohmmeter, unplugged.',
  'better-thermometer':
    'How warm the bath is decides, and not the sensor: use ice, water that boils with a barometer beside it, or a finer thermometer.',
  'better-meter': betterMeter,
  'measure-supply': measureSupply,
  'read-farther-apart':
    'Read it at two temperatures at least 40 K apart: one alone cannot show a wrong curve (common practice, no source).',
};

/**
 * What a pass does not say of a thermistor.
 *
 * @example
 * thermistorUnsaid['response-time'] // => 'How fast it answers.'
 */
export const thermistorUnsaid: Readonly<Record<ThermistorUnsaid, string>> = {
  'plug-and-harness': plug,
  'response-time': 'How fast it answers.',
  'between-temperatures': 'How it reads between and beyond these temperatures.',
  'self-heating':
    'How far the current on the pull-up warmed it: its dissipation constant is not known.',
};
