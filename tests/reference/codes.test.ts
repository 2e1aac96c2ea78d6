import { compareCodeLimit, locateCodeFault, readTroubleCode } from '@truesweep/core';
import { describe, expect, test } from 'vitest';

describe('published meanings of trouble codes', () => {
  /** Source: a published service manual, as SAE J2012 has them: P0112 low, P0113 high of the air sensor; P0117 low, P0118 high of the coolant sensor. */
  test.each([
    ['P0112', 'air-temperature', 'low', 'hot-or-shorted'],
    ['P0113', 'air-temperature', 'high', 'cold-or-open'],
    ['P0117', 'coolant-temperature', 'low', 'hot-or-shorted'],
    ['P0118', 'coolant-temperature', 'high', 'cold-or-open'],
  ])('%s: %s, %s', (code, sensor, kind, means) => {
    expect(readTroubleCode(code)).toEqual({ code, sensor, kind, means });
  });

  /** SAE J2012, from memory. */
  test.each([
    ['P0105', 'manifold-pressure', 'circuit'],
    ['P0106', 'manifold-pressure', 'range'],
    ['P0107', 'manifold-pressure', 'low'],
    ['P0108', 'manifold-pressure', 'high'],
    ['P0109', 'manifold-pressure', 'intermittent'],
    ['P0110', 'air-temperature', 'circuit'],
    ['P0111', 'air-temperature', 'range'],
    ['P0114', 'air-temperature', 'intermittent'],
    ['P0115', 'coolant-temperature', 'circuit'],
    ['P0116', 'coolant-temperature', 'range'],
    ['P0119', 'coolant-temperature', 'intermittent'],
  ])('%s: %s, %s', (code, sensor, kind) => {
    expect(readTroubleCode(code)).toEqual({ code, sensor, kind });
  });

  /** Source: a published service manual: P0117 below 0.2 V, P0118 above 4.9 V for 0.6 s. */
  test('limits of the coolant sensor agree with its codes', () => {
    const agrees = (code: string) => ({ conclusion: 'agrees', code });
    expect(compareCodeLimit({ code: 'P0117', set: 'below', volts: 0.2 })).toEqual(agrees('P0117'));
    expect(compareCodeLimit({ code: 'P0118', set: 'above', volts: 4.9 })).toEqual(agrees('P0118'));
  });
});

/** Source of the mistake: a published service page that assigns P0112 to more than 4.8 V and P0113 to less than 0.18 V. */
test('the published mistake is noticed: P0112 above 4.8 V is P0113, P0113 below 0.18 V is P0112', () => {
  expect(compareCodeLimit({ code: 'P0112', set: 'above', volts: 4.8 })).toEqual({
    conclusion: 'swapped',
    code: 'P0113',
  });
  expect(compareCodeLimit({ code: 'P0113', set: 'below', volts: 0.18 })).toEqual({
    conclusion: 'swapped',
    code: 'P0112',
  });
});

describe('plugged in and unplugged', () => {
  /** Source: a published service manual: a display of −40 °C is an open, of 140 °C a short. */
  test('140 °C that becomes −40 °C when it is unplugged was the sensor', () => {
    const seen = { code: 'P0117', unplugged: 'high' } as const;
    expect(locateCodeFault(seen).conclusion).toBe('sensor');
    expect(locateCodeFault({ ...seen, unplugged: 'low' }).conclusion).toBe(
      'control-unit-or-wiring',
    );
  });

  /** A short or an open is the sensor's only with the sensor unplugged: common practice, no source. */
  test('an open looks the same unplugged: only the bridge tells', () => {
    const open = { code: 'P0118', unplugged: 'high' } as const;
    expect(locateCodeFault(open)).toMatchObject({ conclusion: 'cannot-tell', next: 'bridge' });
    expect(locateCodeFault({ ...open, bridged: 'low' }).conclusion).toBe('sensor');
    expect(locateCodeFault({ ...open, bridged: 'high' }).conclusion).toBe('control-unit-or-wiring');
  });

  /** Source: a published service manual: 0, 20 or 80 °C are displayed in place of a reading, as if measured. */
  test('a value between, unplugged, is no reading', () => {
    expect(locateCodeFault({ code: 'P0118', unplugged: 'between' })).toEqual({
      conclusion: 'cannot-tell',
      because: 'substitute-value',
      next: 'read-volts',
    });
  });
});
