import { expect, test } from 'vitest';
import type { Departure } from '../departures/departure.js';
import { whereTold } from './judgeDepartures.js';
import type { Check } from './score.js';

const failing = {
  check: 'departures',
  unit: 'count',
  measured: 2,
  highLimit: 0,
  margin: -2,
  outcome: 'fails',
  limitFrom: 'criteria',
} as const satisfies Check;
const clean = { ...failing, measured: 0, margin: 0, outcome: 'conforms' } as const satisfies Check;
const step = (depth: number): Departure => ({ kind: 'step', from: 10, to: 11, depth, evidence: 2 });

test('a sweep that shows nothing but a doubtful departure, deeper than noise makes one, can’t be told', () => {
  expect(whereTold(clean, [], 0.02).outcome).toBe('conforms');
  expect(whereTold(clean, [step(-0.024)], 0.02).outcome).toBe('conforms');
  expect(whereTold(clean, [step(-0.026)], 0.02).outcome).toBe('cannot-tell');
});

test('departures that are sure are judged whatever else is doubtful, and no other check hangs on them', () => {
  expect(whereTold(failing, [step(1)], 0.02)).toBe(failing);
  const end = { ...clean, check: 'closed-rest' } as const;
  expect(whereTold(end, [step(1)], 0.02)).toBe(end);
});
