import { describe, expect, test } from 'vitest';
import { switchBounce } from './switchBounce.js';

const levels = { low: 1, high: 4 };
/** Samples a millisecond apart. */
const changesOf = (volts: readonly number[], more = {}) =>
  switchBounce(
    volts.map((_, i) => i / 1000),
    volts,
    { ...levels, ...more },
  );

describe('switchBounce', () => {
  test('one clean leap', () => {
    const { begins, changes } = changesOf([0, 0, 0, 5, 5, 5]);
    expect(begins).toBe('low');
    expect(changes).toHaveLength(1);
    expect(changes[0]).toMatchObject({
      time: 0.003,
      from: 'low',
      to: 'high',
      bounced: 0,
      returns: 0,
    });
    expect(changes[0]!.resolution).toBeCloseTo(0.001, 12);
  });

  test('between the levels it stays what it was', () => {
    expect(changesOf([0, 2.5, 3.9, 4, 1, 2.5, 0]).changes).toEqual([]);
    expect(changesOf([2, 3, 2, 3])).toEqual({ changes: [] });
    expect(changesOf([2, 5, 2, 5])).toEqual({ begins: 'high', changes: [] });
  });

  test('bounce: how long, and how often it returned', () => {
    const { changes } = changesOf([0, 5, 0, 2, 5, 0, 5, 5]);
    expect(changes).toHaveLength(1);
    expect(changes[0]).toMatchObject({ time: 0.001, to: 'high', returns: 2 });
    expect(changes[0]!.bounced).toBeCloseTo(0.005, 12);
  });

  test('an interruption that leads nowhere', () => {
    const { changes } = changesOf([5, 5, 0, 0, 5, 5]);
    expect(changes).toHaveLength(1);
    expect(changes[0]).toMatchObject({ from: 'high', to: 'high', returns: 1 });
    expect(changes[0]!.bounced).toBeCloseTo(0.002, 12);
  });

  test('what is farther apart is changes of their own', () => {
    const volts = [0, 5, 5, 5, 0, 0];
    expect(changesOf(volts).changes).toHaveLength(1);
    const apart = changesOf(volts, { apart: 0.002 }).changes;
    expect(apart.map(({ from, to }) => [from, to])).toEqual([
      ['low', 'high'],
      ['high', 'low'],
    ]);
  });

  test('a gap in the samples is told', () => {
    const { changes } = switchBounce([0, 0.001, 0.301, 0.302], [0, 0, 5, 5], levels);
    expect(changes[0]!.resolution).toBeCloseTo(0.3, 12);
  });

  test('refuses levels the wrong way round', () => {
    expect(() => switchBounce([0], [0], { low: 4, high: 3 })).toThrow(
      expect.objectContaining({ path: 'levels.low', code: 'out-of-order' }),
    );
  });
});
