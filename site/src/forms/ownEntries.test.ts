import { InputError } from '@truesweep/core';
import { describe, expect, test } from 'vitest';
import { boundsOf, type OwnEntry, readEntry } from './entry.js';
import { inductanceEntry } from './inductanceEntry.js';
import { measureEntry, pumpEntry } from './measureEntry.js';
import { measureText } from './measureText.js';
import { numberEntry } from './numberEntry.js';
import { voltsOrOhmsEntry } from './voltsOrOhmsEntry.js';

const read = (entry: OwnEntry, text: string) => readEntry('field', 'Field', entry, text);

/** What a text is refused with, at which field. */
function refusal(entry: OwnEntry, text: string): string {
  try {
    read(entry, text);
  } catch (error) {
    if (error instanceof InputError) return `${error.path}: ${error.message}`;
    throw error;
  }
  throw new Error(`“${text}” was taken.`);
}

const temperature = measureEntry('temperature', [-60, 400], '20 °C');
const pressure = measureEntry('pressure', [3e4, 1.1e5], '1009 hPa');

describe('measures with their units', () => {
  test.each([
    [temperature, '68 °F', 20],
    [temperature, '293.15 K', 20],
    [temperature, '−40 °F', -40],
    [pressure, '29.92 inHg', 101_320.76],
    [pressure, '1009 mbar', 100_900],
    [measureEntry('length', [-500, 6000], ''), '1000 ft', 304.8],
    [measureEntry('temperature-difference', [0, 50], ''), '1 °F', 5 / 9],
  ] as const)('%#: %s', (entry, text, value) => {
    expect(read(entry, text)).toBeCloseTo(value, 1);
  });

  test('a number without its unit is refused, with what would be right', () => {
    expect(refusal(temperature, '20')).toBe(
      'field: “20” has no unit; write a temperature with its unit, such as 20 °C, 68 °F or 293 K.',
    );
    expect(refusal(pressure, '29.92')).toMatch(/^field: .*no unit/);
  });

  test('what lies outside is refused with both bounds in °C, K, kPa or m', () => {
    expect(boundsOf(temperature)).toEqual(['−60\u00a0°C', '400\u00a0°C']);
    expect(boundsOf(pressure)).toEqual(['30\u00a0kPa', '110\u00a0kPa']);
    expect(refusal(pressure, '1 psi')).toMatch(/write 30.kPa to 110.kPa\.$/);
    expect(refusal(temperature, '900 °F')).toMatch(/write −60.°C to 400.°C\.$/);
  });

  test('are written without noughts that say nothing', () => {
    expect([measureText(20, '°C'), measureText(0.3, 'K'), measureText(100, 'kPa')]).toEqual([
      '20\u00a0°C',
      '0.3\u00a0K',
      '0.1\u00a0kPa',
    ]);
    expect(measureText(100_000, 'kPa')).toBe('100\u00a0kPa');
  });
});

describe('a hand pump', () => {
  const pump = pumpEntry('');

  test('says what its pressure counts from', () => {
    expect(read(pump, '18 inHg vacuum')).toMatchObject({ reference: 'gauge' });
    expect(read(pump, '−60 kPa gauge')).toEqual({ reference: 'gauge', pascals: -60_000 });
    expect(read(pump, '40 kPa absolute')).toEqual({ reference: 'absolute', pascals: 40_000 });
    expect(read(pump, ' ')).toBeUndefined();
  });

  test('is never guessed', () => {
    for (const text of ['18 inHg', '40 kPa'])
      expect(refusal(pump, text)).toMatch(
        /gauge or absolute; write “absolute”, “gauge” or “vacuum”/,
      );
    expect(refusal(pump, '40 vacuum')).toMatch(/no unit/);
    expect(refusal(pump, '5 bar gauge')).toMatch(/−100.kPa gauge to 400.kPa gauge/);
  });
});

test('a plain number, an inductance, volts or ohms', () => {
  expect(read(numberEntry([-1, 1], ''), '−0,085')).toBe(-0.085);
  expect(refusal(numberEntry([-1, 1], ''), '8.8 mV')).toMatch(/no plain number/);
  expect(refusal(numberEntry([-1, 1], ''), '2')).toMatch(/write −1 to 1/);
  expect(read(inductanceEntry(''), '6 mH')).toBeCloseTo(0.006, 12);
  expect(read(inductanceEntry(''), '0.5H')).toBe(0.5);
  for (const text of ['6', '6 mV', 'mH'])
    expect(refusal(inductanceEntry(''), text)).toMatch(/no inductance/);
  expect(refusal(inductanceEntry(''), '1 kH')).toMatch(/write 1.µH to 100.H/);
  expect(read(voltsOrOhmsEntry(''), '980 mV')).toEqual({ unit: 'V', value: 0.98 });
  expect(read(voltsOrOhmsEntry(''), '0.4 Ω')).toEqual({ unit: 'Ω', value: 0.4 });
  expect(read(voltsOrOhmsEntry(''), 'OL')).toEqual({ unit: 'Ω', value: Number.POSITIVE_INFINITY });
  expect(refusal(voltsOrOhmsEntry(''), '4.1')).toMatch(/write volts or ohms with their unit/);
  expect(refusal(voltsOrOhmsEntry(''), '-5 V')).toMatch(/write 0.V to 60.V/);
});
