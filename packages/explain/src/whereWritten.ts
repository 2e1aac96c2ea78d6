import { InputError, isInputError } from '@truesweep/core';
import type { Working } from './working.js';

/**
 * The workings of a page or a command: those that none is written for are left out.
 *
 * @param makes Each makes one.
 * @throws InputError `not-a-function`, and what they throw but `no-working`.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * whereWritten(
 *   () => explainOperatingPoint(circuit, 0.9),
 *   () => explainLoadingError(circuit),
 * ).length // => 1
 */
export function whereWritten(...makes: readonly (() => Working)[]): readonly Working[] {
  return makes.flatMap((make, i) => {
    const path = `makes[${i}]`;
    if (typeof make !== 'function')
      throw new InputError('not-a-function', path, `${path} is none; it must make a working.`);
    try {
      return [make()];
    } catch (error) {
      if (isInputError(error) && error.code === 'no-working') return [];
      throw error;
    }
  });
}
