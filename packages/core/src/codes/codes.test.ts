import { describe, expect, test } from 'vitest';
import { type CodedCheck, codesOfReadings } from './codesOfReadings.js';
import { compareCodeLimit } from './compareCodeLimit.js';
import { type CodeObservations, locateCodeFault } from './locateCodeFault.js';
import { readTroubleCode } from './readTroubleCode.js';

describe('readTroubleCode', () => {
  test('refuses another code', () => {
    expect(() => readTroubleCode('P0122')).toThrow(
      expect.objectContaining({ path: 'code', code: 'unknown-choice' }),
    );
  });

  test('a level means hot or cold of a thermistor only', () => {
    expect(readTroubleCode('P0113').means).toBe('cold-or-open');
    expect(readTroubleCode('P0108').means).toBeUndefined();
    expect(readTroubleCode('P0116').means).toBeUndefined();
  });
});

describe('codesOfReadings', () => {
  // A published service manual has P0117 set below 0.2 V and P0118 above 4.9 V.
  test.each([
    ['thermistor', 'Ω', 210, 150, 190, ['P0116', 'P0111']],
    ['thermistor', 'Ω', 14, 150, 190, ['P0117', 'P0112']],
    ['thermistor', 'Ω', 1e18, 150, 190, ['P0118', 'P0113']],
    ['thermistor', 'V', 0.87, 0.6, 0.8, ['P0116', 'P0111']],
    ['thermistor', 'V', 0.19, 0.6, 0.8, ['P0117', 'P0112']],
    ['thermistor', 'V', 4.91, 0.6, 0.8, ['P0118', 'P0113']],
    ['pressure', '1', 0.44, 0.3, 0.33, ['P0106']],
    ['pressure', '1', 0.04, 0.3, 0.33, ['P0107']],
    ['pressure', '1', 0.98, 0.3, 0.33, ['P0108']],
  ] as const)('%s %s %d of %d to %d', (kind, unit, measured, lowLimit, highLimit, codes) => {
    const failing = { check: 'resistance', outcome: 'fails', unit, measured, lowLimit, highLimit };
    const found = codesOfReadings(kind, [failing as CodedCheck]);
    expect(found.map(({ code }) => code)).toEqual(codes);
  });
});

describe('compareCodeLimit', () => {
  test.each([
    ['P0108', 'above', 4.9, { conclusion: 'agrees', code: 'P0108' }],
    ['P0108', 'below', 0.1, { conclusion: 'swapped', code: 'P0107' }],
    ['P0112', 'above', 0.5, { conclusion: 'cannot-tell' }],
    ['P0111', 'above', 4.8, { conclusion: 'cannot-tell' }],
  ] as const)('%s %s %d V', (code, set, volts, expected) => {
    expect(compareCodeLimit({ code, set, volts })).toEqual(expected);
  });

  test('refuses volts beyond the supply', () => {
    expect(() => compareCodeLimit({ code: 'P0112', set: 'below', volts: 6 })).toThrow(
      expect.objectContaining({ path: 'stated.volts' }),
    );
  });
});

describe('locateCodeFault', () => {
  test.each<[CodeObservations, string, string, string | undefined]>([
    // A short: low.
    [{ code: 'P0117' }, 'cannot-tell', 'plugged-in-only', 'unplug'],
    [{ code: 'P0117', unplugged: 'high' }, 'sensor', 'gone-unplugged', 'measure-sensor'],
    [
      { code: 'P0117', unplugged: 'low' },
      'control-unit-or-wiring',
      'stays-unplugged',
      'measure-leads',
    ],
    [
      { code: 'P0117', unplugged: 'low', leads: 'shorted' },
      'wiring-short',
      'leads-shorted',
      undefined,
    ],
    [
      { code: 'P0117', unplugged: 'low', leads: 'sound' },
      'control-unit',
      'stays-unplugged',
      undefined,
    ],
    [
      { code: 'P0117', unplugged: 'low', bridged: 'high' },
      'cannot-tell',
      'contradictory',
      'move-leads',
    ],
    // What contradicts itself concludes nothing.
    [{ code: 'P0117', leads: 'open' }, 'cannot-tell', 'contradictory', 'move-leads'],
    [{ code: 'P0118', leads: 'shorted' }, 'cannot-tell', 'contradictory', 'move-leads'],
    [
      { code: 'P0117', unplugged: 'high', leads: 'shorted' },
      'cannot-tell',
      'contradictory',
      'move-leads',
    ],
    [
      { code: 'P0118', unplugged: 'low', leads: 'sound' },
      'cannot-tell',
      'contradictory',
      'move-leads',
    ],
    [{ code: 'P0118', unplugged: 'low' }, 'cannot-tell', 'contradictory', 'move-leads'],
    [{ code: 'P0108', leads: 'open', pull: 'down' }, 'cannot-tell', 'contradictory', 'move-leads'],
    // Which way a pressure sensor's signal is pulled isn't known: nothing contradicts yet.
    [
      { code: 'P0107', leads: 'open', pull: 'up', supply: 'missing' },
      'wiring-open',
      'leads-open',
      undefined,
    ],
    [
      { code: 'P0118', unplugged: 'low', leads: 'open' },
      'cannot-tell',
      'contradictory',
      'move-leads',
    ],
    // Of three wires the signal's may touch the supply's.
    [{ code: 'P0108', leads: 'shorted', pull: 'up' }, 'wiring-short', 'leads-shorted', undefined],
    [
      { code: 'P0108', unplugged: 'low', leads: 'shorted', pull: 'up' },
      'cannot-tell',
      'contradictory',
      'move-leads',
    ],
    [{ code: 'P0108', leads: 'open' }, 'wiring-open', 'leads-open', undefined],
    [{ code: 'P0118', leads: 'open' }, 'wiring-open', 'leads-open', undefined],
    [{ code: 'P0117', leads: 'shorted' }, 'wiring-short', 'leads-shorted', undefined],
    // An open: high, which unplugged looks the same.
    [{ code: 'P0118', unplugged: 'high' }, 'cannot-tell', 'looks-unplugged', 'bridge'],
    [
      { code: 'P0118', unplugged: 'high', bridged: 'low' },
      'sensor',
      'follows-plug',
      'measure-sensor',
    ],
    [
      { code: 'P0118', unplugged: 'high', bridged: 'high' },
      'control-unit-or-wiring',
      'ignores-bridge',
      'measure-leads',
    ],
    [
      { code: 'P0118', unplugged: 'high', bridged: 'high', leads: 'open' },
      'wiring-open',
      'leads-open',
      undefined,
    ],
    [
      { code: 'P0118', unplugged: 'high', bridged: 'high', leads: 'sound' },
      'control-unit',
      'ignores-bridge',
      undefined,
    ],
    // A value that stands in place of the signal.
    [{ code: 'P0118', unplugged: 'between' }, 'cannot-tell', 'substitute-value', 'read-volts'],
    [
      { code: 'P0118', unplugged: 'high', bridged: 'between' },
      'cannot-tell',
      'substitute-value',
      'read-volts',
    ],
    // Codes that tell no level.
    [
      { code: 'P0115', unplugged: 'high', bridged: 'low' },
      'sensor',
      'follows-plug',
      'measure-sensor',
    ],
    [{ code: 'P0115', unplugged: 'high' }, 'cannot-tell', 'looks-unplugged', 'bridge'],
    [
      { code: 'P0116', unplugged: 'high', bridged: 'low' },
      'cannot-tell',
      'follows-plug',
      'measure-sensor',
    ],
    [
      { code: 'P0119', unplugged: 'high', bridged: 'low' },
      'cannot-tell',
      'follows-plug',
      'move-leads',
    ],
    // A pressure sensor: three wires, pulled either way.
    [{ code: 'P0107', unplugged: 'low' }, 'cannot-tell', 'pull-unknown', 'find-pull'],
    [{ code: 'P0107', unplugged: 'low', pull: 'down' }, 'cannot-tell', 'looks-unplugged', 'bridge'],
    [
      { code: 'P0107', unplugged: 'low', bridged: 'high', pull: 'down' },
      'cannot-tell',
      'follows-plug',
      'measure-supply',
    ],
    [
      { code: 'P0107', unplugged: 'low', bridged: 'high', pull: 'down', supply: 'right' },
      'sensor',
      'follows-plug',
      'measure-sensor',
    ],
    [{ code: 'P0107', supply: 'missing' }, 'control-unit-or-wiring', 'no-supply', 'measure-leads'],
    [{ code: 'P0107', supply: 'missing', leads: 'sound' }, 'control-unit', 'no-supply', undefined],
    [
      { code: 'P0108', unplugged: 'low', pull: 'down', supply: 'right' },
      'sensor',
      'gone-unplugged',
      'measure-sensor',
    ],
    [
      { code: 'P0108', unplugged: 'high', pull: 'down' },
      'control-unit-or-wiring',
      'stays-unplugged',
      'measure-leads',
    ],
  ])('%j: %s', (seen, conclusion, because, next) => {
    expect(locateCodeFault(seen)).toEqual({ conclusion, because, ...(next && { next }) });
  });

  test('refuses what belongs to a pressure sensor only', () => {
    expect(() => locateCodeFault({ code: 'P0117', pull: 'up' })).toThrow(
      expect.objectContaining({ path: 'seen.pull', code: 'unexpected' }),
    );
  });
});
