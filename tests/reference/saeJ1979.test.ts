import {
  absoluteThrottlePercent,
  relativeThrottlePercent,
  throttlePercentRatio,
} from '@truesweep/core';
import { describe, expect, test } from 'vitest';

describe('SAE J1979, throttle position', () => {
  /**
   * Source of the scaling A · 100/255 % of parameter 0x11, second-hand: a public scan-tool library's table of
   * parameters; recorded drives obey it to less than 1e-5 of a count.
   */
  test('one count is 0.392157 %', () => {
    expect(absoluteThrottlePercent(1 / 255).count).toBe(1);
    expect(absoluteThrottlePercent(1 / 255).percent).toBeCloseTo(0.392157, 6);
    expect(absoluteThrottlePercent(1).percent).toBe(100);
  });

  /** Source: a recorded drive whose column for parameter 0x49, of the same scaling, holds this figure. */
  test('20 counts are 7.84313725490196 %', () => {
    expect(absoluteThrottlePercent(20 / 255).percent).toBeCloseTo(7.84313725490196, 13);
    expect(throttlePercentRatio(7.84313725490196).count).toBe(20);
  });

  /** From memory: on a 5 V reference, learned closed at 1.0 V, relative position is 0 % there and 30 % at 2.5 V. */
  test('parameter 0x45 counts from the learned closed value (from memory)', () => {
    expect(relativeThrottlePercent(1 / 5, 1 / 5).percent).toBe(0);
    const half = relativeThrottlePercent(2.5 / 5, 1 / 5);
    expect(half.low).toBeLessThanOrEqual(30);
    expect(half.high).toBeGreaterThanOrEqual(30);
  });
});
