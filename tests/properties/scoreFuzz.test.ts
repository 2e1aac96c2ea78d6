import { InputError, type Score, scoreSweep } from '@truesweep/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../counts.js';
import { mutatedSweep, notASweep, type RecordedCase } from './brokenSweeps.js';

/** The score, or nothing where the sweep was refused. */
function scored({ sweep, expected, recorder }: RecordedCase): Score | undefined {
  try {
    return scoreSweep(sweep, expected, recorder);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return undefined;
  }
}

/** The paths of what is no finite number in a result. */
function notFinite(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path}: ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => notFinite(part, `${path}.${key}`));
}

test('what is no sweep is refused or judged, never passed, and nothing infinite leaves', () => {
  fc.assert(
    fc.property(notASweep, (one) => {
      const score = scored(one);
      expect(score?.verdict).not.toBe('pass');
      expect(notFinite(score)).toEqual([]);
    }),
    { numRuns: 3500 * soak },
  );
});

test('a mutated sweep is refused or judged, and nothing infinite leaves', () => {
  fc.assert(
    fc.property(mutatedSweep, (one) => {
      expect(notFinite(scored(one))).toEqual([]);
    }),
    { numRuns: 1500 * soak },
  );
});
