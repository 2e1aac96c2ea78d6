import { describe, expect, test } from 'vitest';
import { isInputError } from '../errors.js';
import { checkPressureSensor } from './checkPressureSensor.js';
import type { PressureSensor } from './pressureSensor.js';

function refused(sensor: unknown): string {
  try {
    checkPressureSensor(sensor as PressureSensor, 'sensor');
  } catch (error) {
    if (isInputError(error)) return `${error.code} at ${error.path}`;
    throw error;
  }
  return 'taken';
}

const line = { kind: 'line', gain: 9e-6, offset: -0.095, lowest: 15_000, highest: 115_000 };
const rows = [
  { pressure: 20_000, ratio: 0.16 },
  { pressure: 60_000, ratio: 0.47 },
  { pressure: 101_000, ratio: 0.8 },
];
const sensor = (more: object = {}) => ({ reference: 'absolute', response: line, ...more });
const ofLine = (more: object) => sensor({ response: { ...line, ...more } });
const ofRows = (...changed: readonly object[]) =>
  sensor({ response: { kind: 'table', rows: rows.map((row, i) => ({ ...row, ...changed[i] })) } });

describe('a pressure sensor', () => {
  test.each([
    ['a line', sensor()],
    ['one that falls', ofLine({ gain: -9e-6, offset: 1 })],
    ['a table', ofRows()],
    [
      'a gauge sensor below the air',
      sensor({ reference: 'gauge', response: { ...line, lowest: -1e5, highest: 0 } }),
    ],
    [
      'all that can be told',
      sensor({
        error: 1500,
        errorFactors: [
          { temperature: 85, factor: 1 },
          { temperature: 125, factor: 3 },
        ],
        supply: { low: 4.8, high: 5.3 },
      }),
    ],
  ])('%s is taken', (_, given) => {
    expect(refused(given)).toBe('taken');
  });

  test.each([
    ['no reference', { response: line }, 'missing at sensor.reference'],
    ['another reference', sensor({ reference: 'sealed' }), 'unknown-choice at sensor.reference'],
    ['no answer to the pressure', ofLine({ gain: 0 }), 'out-of-order at sensor.response.gain'],
    ['no range', ofLine({ highest: 15_000 }), 'out-of-order at sensor.response.highest'],
    ['an absolute pressure below 0', ofLine({ lowest: -1 }), 'out-of-order at sensor.response'],
    [
      'rows of one pressure',
      ofRows({}, { pressure: 20_000 }),
      'out-of-order at sensor.response.rows[1].pressure',
    ],
    [
      'rows that turn back',
      ofRows({}, {}, { ratio: 0.4 }),
      'out-of-order at sensor.response.rows[2].ratio',
    ],
    [
      'rows of one ratio',
      ofRows({}, { ratio: 0.16 }),
      'out-of-order at sensor.response.rows[1].ratio',
    ],
    ['a negative error', sensor({ error: -1 }), 'negative at sensor.error'],
    [
      'a factor below 1',
      sensor({ errorFactors: [{ temperature: 0, factor: 0.5 }] }),
      'out-of-range at sensor.errorFactors[0].factor',
    ],
    [
      'factors out of order',
      sensor({
        errorFactors: [
          { temperature: 85, factor: 1 },
          { temperature: 0, factor: 1 },
        ],
      }),
      'out-of-order at sensor.errorFactors[1].temperature',
    ],
    [
      'supplies the wrong way round',
      sensor({ supply: { low: 5, high: 4 } }),
      'out-of-order at sensor.supply.high',
    ],
  ])('%s is refused', (_, given, told) => {
    expect(refused(given)).toBe(told);
  });
});
