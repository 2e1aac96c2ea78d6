import { describe, expect, test } from 'vitest';
import { type RefitReadings, refitChecks } from './refitChecks.js';

const closed = { low: 0.4, nominal: 0.5, high: 0.6 };

describe('refitChecks', () => {
  test('nothing done yet: all to do, with the window as a ratio', () => {
    expect(refitChecks(closed, 5, true)).toEqual([
      { code: 'closed-ratio', outcome: 'to-do', low: 0.08, high: 0.12 },
      { code: 'closed-ratio-warm', outcome: 'to-do', low: 0.08, high: 0.12 },
      { code: 'relearn-closed', outcome: 'to-do' },
      { code: 'snaps-shut', outcome: 'to-do' },
    ]);
  });

  test('the measured reference counts, not the nominal one', () => {
    const at = (reference: number) =>
      refitChecks(closed, 5, false, { cold: { volts: 0.605, reference } })[0]!.outcome;
    expect(at(5)).toBe('not-met');
    expect(at(5.1)).toBe('met');
  });

  test('the warm reading is judged by itself and is what must be learned anew', () => {
    const checks = refitChecks(closed, 5, true, {
      cold: { volts: 0.5, reference: 5 },
      warm: { volts: 0.65, reference: 5 },
      learnedClosed: 0.1,
      relearned: true,
      snapsShut: true,
    });
    expect(checks.map(({ outcome }) => outcome)).toEqual(['met', 'not-met', 'met', 'met']);
    expect(checks[2]).toMatchObject({ shift: expect.closeTo(0.03, 12) });
  });

  test('a throttle that does not snap shut is not met; a relearn that was not made is to do', () => {
    const checks = refitChecks(closed, 5, true, { snapsShut: false, relearned: false });
    expect(checks.slice(2).map(({ outcome }) => outcome)).toEqual(['to-do', 'not-met']);
  });

  test.each([
    [() => refitChecks(undefined as never, 5, true), 'closed'],
    [() => refitChecks({ ...closed, low: Number.NaN }, 5, true), 'closed.low'],
    [() => refitChecks({ ...closed, high: 0.1 }, 5, true), 'closed.high'],
    [() => refitChecks(closed, 0, true), 'reference'],
    [() => refitChecks(closed, 5, undefined as never), 'asksRelearn'],
    [() => refitChecks(closed, 5, true, null as never), 'readings'],
    [
      () => refitChecks(closed, 5, true, { cold: { volts: 1, reference: 0 } }),
      'readings.cold.reference',
    ],
    [
      () => refitChecks(closed, 5, true, { warm: { volts: Number.NaN, reference: 5 } }),
      'readings.warm.volts',
    ],
    [() => refitChecks(closed, 5, true, { learnedClosed: 2 }), 'readings.learnedClosed'],
    [
      () => refitChecks(closed, 5, true, { snapsShut: 'yes' } as unknown as RefitReadings),
      'readings.snapsShut',
    ],
    [
      () => refitChecks(closed, 5, true, { relearned: 1 } as unknown as RefitReadings),
      'readings.relearned',
    ],
  ])('refuses (%#) by path', (call, path) => {
    expect(call).toThrow(expect.objectContaining({ name: 'InputError', path }));
  });
});
