import { InputError } from '../errors.js';

/** Limits of which one may be left out. */
export interface ReadingLimits {
  /** The lowest value that is right, in the unit of what is read, any that can be read; none when left out. */
  readonly low?: number;
  /** The highest value that is right, in the unit of what is read, not below `low`; none when left out. */
  readonly high?: number;
}

/** Refuses limits that are the wrong way round, and a pair of which both are left out. */
export function checkLimits({ low, high }: ReadingLimits, path: string): void {
  if (low === undefined && high === undefined) {
    throw new InputError(
      'missing',
      `${path}.low`,
      `${path} has neither low nor high; it must have one of them, or both.`,
    );
  }
  if (low !== undefined && high !== undefined && low > high) {
    throw new InputError(
      'out-of-order',
      `${path}.low`,
      `${path}.low is ${low}, above ${path}.high, ${high}; it must not be.`,
    );
  }
}
