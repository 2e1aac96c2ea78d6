import type { PressureAdvice, PressureUnsaid } from '@truesweep/core';
import { betterMeter, plug, readAgain, refit, replace } from './sharedReadingWords.js';

/**
 * What to do next of a pressure sensor, by the advice.
 *
 * @example
 * pressureAdvice['state-error'] // => 'Say how far a sound sensor may be off: without that no reading can be judged.'
 */
export const pressureAdvice: Readonly<Record<PressureAdvice, string>> = {
  refit,
  'read-again': readAgain,
  'replace-sensor': replace,
  'state-error': 'Say how far a sound sensor may be off: without that no reading can be judged.',
  'mend-supply':
    'The supply is not one that the sensor is made for: mend that first, then read again.',
  'read-open-port': 'Read it with the port open, and the pressure of the air from a barometer.',
  'pump-farther':
    "Pump through a quarter of the sensor's range at least: less does not show a wrong gain (common practice, no source).",
  'better-voltmeter': betterMeter,
  'use-barometer':
    'The pressure of the air decides: know it better, by a good barometer at the bench; from the altitude alone the weather leaves ±3 kPa.',
  'better-pump-gauge': "The pump's gauge decides: use a finer one.",
};

/**
 * What a pass does not say of a pressure sensor.
 *
 * @example
 * pressureUnsaid.hose // => 'Its hose, port and filter on the machine.'
 */
export const pressureUnsaid: Readonly<Record<PressureUnsaid, string>> = {
  'plug-and-harness': plug,
  hose: 'Its hose, port and filter on the machine.',
  'response-time': 'How fast it answers.',
  'other-temperatures': 'How it reads hotter or colder than on the bench.',
};
