import type { Check } from '@truesweep/core';
import { expect, test } from 'vitest';
import { quantityOf } from './quantities.js';
import { recordOfFacts } from './recordOf.js';

const end = (
  check: 'closed-end' | 'open-end',
  measured: number,
  low: number,
  high: number,
  outcome: Check['outcome'] = 'conforms',
): Check => ({
  check,
  outcome,
  unit: 'V',
  measured,
  lowLimit: low,
  highLimit: high,
  uncertainty: 0.002,
  limitFrom: 'expected-window',
});

const recordWith = (...checks: Check[]) =>
  recordOfFacts(
    { sensor: 'Port engine', sha256: 'a'.repeat(64), file: 'port.csv' },
    {
      verdict: 'inconclusive',
      causes: [],
      checks,
      noise: 0.001,
      visible: 0.02,
      roughness: 0,
      findings: 0,
      recorder: { interval: 0.001, resolution: 0.001 },
    },
  );

test('a reading short of its stop is none of it, of a sensor that rises and of one that falls', () => {
  const right = end('open-end', 4.5, 4.4, 4.6);
  expect(recordWith(end('closed-end', 0.9, 0.4, 0.6, 'cannot-tell'), right).closed).toEqual({
    low: 0.4,
    high: 0.6,
  });
  expect(recordWith(end('closed-end', 0.9, 0.4, 0.6, 'fails'), right).closed).toMatchObject({
    volts: 0.9,
  });
  const falling = end('open-end', 0.9, 0.4, 0.6, 'cannot-tell');
  expect(recordWith(end('closed-end', 4.5, 4.4, 4.6), falling)).toMatchObject({
    closed: { volts: 4.5 },
  });
  expect(recordWith(end('closed-end', 4.5, 4.4, 4.6), falling).open).toEqual({
    low: 0.4,
    high: 0.6,
  });
});

test('one in a window too narrow to judge by is kept: a trend needs no window', () => {
  const narrow = end('closed-end', 0.5, 0.499, 0.501, 'cannot-tell');
  expect(recordWith(narrow, end('open-end', 4.5, 4.4, 4.6)).closed).toEqual({
    volts: 0.5,
    uncertainty: 0.002,
    low: 0.499,
    high: 0.501,
  });
});

test('a stop that was not reached leaves the other its scale', () => {
  const short = end('open-end', 3.9, 4.4, 4.6, 'cannot-tell');
  const record = recordWith(end('closed-end', 0.54, 0.4, 0.6), short);
  expect(quantityOf('closed', record)?.value).toBeCloseTo(0.01, 12);
  expect(quantityOf('open', record)).toBeUndefined();
});
