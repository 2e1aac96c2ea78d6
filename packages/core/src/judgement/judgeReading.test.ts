import { describe, expect, test } from 'vitest';
import { InputError } from '../errors.js';
import { judgeReading } from './judgeReading.js';

const judge = (measured: number, uncertainty: number, limits = { low: 90, high: 110 }) =>
  judgeReading({ measured, ...limits, inputs: [{ name: 'meter', sensitivity: 1, uncertainty }] });

describe('judgeReading', () => {
  test.each([
    [100, 1, 'conforms'],
    [90, 1, 'conforms'],
    [89.9, 1, 'marginal'],
    [87.01, 1, 'marginal'],
    [86.99, 1, 'fails'],
    [113.01, 1, 'fails'],
    // Twice U on either side is 20 wide: u of 2.5 just tells, of 2.6 no longer.
    [109, 2.5, 'conforms'],
    [109, 2.6, 'cannot-tell'],
    [104.7, 2.6, 'conforms'],
    [111, 2.6, 'cannot-tell'],
    [117.9, 2.6, 'fails'],
    [100, 6, 'cannot-tell'],
  ])('%d with u = %d between 90 and 110: %s', (measured, uncertainty, outcome) => {
    expect(judge(measured, uncertainty).outcome).toBe(outcome);
  });

  test('a limit on one side only', () => {
    const ohms = (measured: number) =>
      judgeReading({
        measured,
        high: 0.5,
        inputs: [{ name: 'meter', sensitivity: 1, uncertainty: 0.05 }],
      });
    expect(ohms(0.2)).toMatchObject({ outcome: 'conforms', mostUncertain: 'meter' });
    expect(ohms(0.64).outcome).toBe('marginal');
    expect(ohms(0.66).outcome).toBe('fails');
  });

  test('a meter too coarse for a single limit can’t tell', () => {
    const coarse = (measured: number) =>
      judgeReading({
        measured,
        high: 0.5,
        inputs: [{ name: 'meter', sensitivity: 1, uncertainty: 0.5 }],
      }).outcome;
    expect([coarse(0.45), coarse(1.9), coarse(2.1)]).toEqual([
      'cannot-tell',
      'cannot-tell',
      'fails',
    ]);
  });

  test('guarded: it conforms from U inside on', () => {
    const guarded = (measured: number) =>
      judgeReading(
        {
          measured,
          low: 90,
          high: 110,
          inputs: [{ name: 'meter', sensitivity: 1, uncertainty: 1 }],
        },
        'guarded',
      ).outcome;
    expect(guarded(92)).toBe('conforms');
    expect(guarded(91.9)).toBe('marginal');
  });

  test('the probability of conformance; nothing uncertain is sure', () => {
    // Φ(1) − Φ(−19): a standard normal table.
    expect(judge(109, 1).conformance).toBeCloseTo(0.841345, 6);
    expect(judge(90, 1).conformance).toBeCloseTo(0.5, 6);
    expect(judge(100, 0)).toEqual({
      outcome: 'conforms',
      uncertainty: 0,
      margin: 10,
      conformance: 1,
    });
    expect(judge(80, 0).conformance).toBe(0);
  });

  test('refuses limits that are the wrong way round', () => {
    expect(() => judge(100, 1, { low: 2, high: 1 })).toThrow(InputError);
  });
});
