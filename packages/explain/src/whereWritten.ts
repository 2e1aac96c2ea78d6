import { isInputError } from '@truesweep/core';
import type { Working } from './working.js';

/**
 * The workings of a page or a command: those that none is written for are left out.
 *
 * @param makes Each makes one.
 * @throws What they throw but `no-working`.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * whereWritten(
 *   () => explainOperatingPoint(circuit, 0.9),
 *   () => explainLoadingError(circuit),
 * ).length // => 1
 */
export function whereWritten(...makes: readonly (() => Working)[]): readonly Working[] {
  return makes.flatMap((make) => {
    try {
      return [make()];
    } catch (error) {
      if (isInputError(error) && error.code === 'no-working') return [];
      throw error;
    }
  });
}
