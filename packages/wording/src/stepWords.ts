import type { HeldStep } from '@truesweep/core';
import { formatAlike } from './formatAlike.js';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * What is said of a held step of a recording.
 *
 * @example
 * stepWords.held({ start: 0.5, end: 4, volts: 2.53, uncertainty: 0.001, drift: 0.0004 }) // => 'Held from 0.50 to 4.00 s at 2.53 V, drifting by 400 µV in a second.'
 */
export const stepWords = {
  held: (step: HeldStep): string =>
    whole(step, 'step', () => {
      const { numbers, unit } = formatAlike([step.start, step.end], 's');
      const volts = (value: number): string => {
        const { numbers: written, unit: shown } = formatAlike([value], 'V');
        return say`${written[0]!} ${shown}`;
      };
      const held = say`Held from ${numbers[0]!} to ${numbers[1]!} ${unit} at ${volts(step.volts)}`;
      return step.drift === undefined
        ? say`${held}; too few samples to know how it drifts.`
        : say`${held}, drifting by ${volts(step.drift)} in a second.`;
    }),
  leaks: (tau: number): string => {
    if (tau === Number.POSITIVE_INFINITY)
      return 'No leak stands out of the noise of this recording.';
    const { numbers, unit } = formatAlike([tau], 's');
    return say`At that rate the vacuum falls to 37 % in ${numbers[0]!} ${unit}: how tight pump, hose and sensor are together. No source was found for a limit. Freshly pumped air warms up again and looks like a leak: wait before timing.`;
  },
} as const;
