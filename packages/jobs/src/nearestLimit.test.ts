import type { Check } from '@truesweep/core';
import { expect, test } from 'vitest';
import { nearestLimit } from './nearestLimit.js';

const check = (more: Partial<Check>): Check => ({
  check: 'closed-end',
  outcome: 'conforms',
  unit: 'V',
  limitFrom: 'criteria',
  ...more,
});

test('a margin counts by what it could be: half of the room between two limits, or one limit’s distance from zero', () => {
  const between = check({ lowLimit: 1, highLimit: 3, margin: 0.5 });
  expect(nearestLimit([between])).toEqual({ check: 'closed-end', margin: 0.5 });
  const below = check({ check: 'closed-rest', highLimit: 0.03, margin: 0.006 });
  expect(nearestLimit([between, below])?.margin).toBeCloseTo(0.2);
});

test('of a limit at zero only what lies beyond it counts', () => {
  const departures = { check: 'departures', unit: 'count', highLimit: 0 } as const;
  expect(nearestLimit([check({ ...departures, margin: 0 })])).toBeUndefined();
  expect(nearestLimit([check({ ...departures, margin: -8 })])).toEqual({
    check: 'departures',
    margin: -8,
  });
});

test('what was not judged or has no margin says nothing', () => {
  const unjudged = check({ outcome: 'not-judged', highLimit: 1, margin: 0.1 });
  expect(nearestLimit([unjudged, check({ highLimit: 1 })])).toBeUndefined();
});
