import {
  findPins,
  InputError,
  type PinFinding,
  type PinReading,
  parseQuantity,
  type Stop,
} from '@truesweep/core';

const form = /^([^\s=,]+),([^\s=,]+)=([^/]+)\/(.+)$/;

/**
 * Finds the terminals from readings as they are typed: two terminals, then the resistance with the throttle closed and open,
 * such as `A,B=5k/5k`; `open` or `OL` where the meter shows over-range, `-` for a reading not taken.
 *
 * @throws InputError for a reading that is none.
 */
export function pinsOf(
  readings: readonly string[],
  meterError: string,
  meterOhms: string,
): PinFinding {
  const taken = readings.flatMap(readingsOf);
  const terminals = [...new Set(taken.flatMap(({ between }) => between))].sort();
  return findPins(terminals, taken, {
    fraction: parseQuantity(meterError, '%', '--meter-error'),
    ohms: parseQuantity(meterOhms, 'Ω', '--meter-ohms'),
  });
}

function readingsOf(text: string): readonly PinReading[] {
  const match = form.exec(text);
  if (!match) {
    throw new InputError(
      'not-a-reading',
      text,
      `${JSON.stringify(text)} is no reading; write two terminals, then the resistance with the throttle closed and open, such as A,B=5k/5k.`,
    );
  }
  const [, a, b, closed, open] = match as unknown as readonly [
    string,
    string,
    string,
    string,
    string,
  ];
  const one = (at: Stop, value: string): readonly PinReading[] =>
    value === '-' ? [] : [{ between: [a, b], at, ohms: ohmsOf(value, text) }];
  return [...one('closed', closed), ...one('open', open)];
}

function ohmsOf(value: string, path: string): number {
  return /^(ol|open)$/i.test(value) ? Number.POSITIVE_INFINITY : parseQuantity(value, 'Ω', path);
}
