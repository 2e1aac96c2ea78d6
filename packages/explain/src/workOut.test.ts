import { expect, test } from 'vitest';
import { call, difference, power, product, quotient, root, sum } from './expression.js';
import { type Sheet, workOut } from './workOut.js';

const rule = { name: 'Test', source: 'none' };

/** A working of 5 V over 2 kΩ with one step. */
const one = (unit: 'A' | 'V' | '1' | 'W', formula: ReturnType<typeof sum>) =>
  workOut('test', (sheet: Sheet) => {
    sheet.give({ symbol: 'E', meaning: 'source', value: 5, unit: 'V' });
    sheet.give({ symbol: 'R', meaning: 'resistor', value: 2000, unit: 'Ω' });
    sheet.find({ symbol: 'y', meaning: 'found', unit, formula, rule });
    return {};
  });

test('a formula of another unit than it says is refused: amperes are no volts', () => {
  expect(one('A', quotient('E', 'R')).answer.value).toBe(0.0025);
  expect(() => one('V', quotient('E', 'R'))).toThrow('was found where V is wanted');
  expect(() => one('1', quotient('E', 'R'))).toThrow('was found where a number is wanted');
  expect(() => one('V', quotient('E', 'E'))).toThrow('A plain number was found where V is wanted');
});

test('units that differ are not added or compared, and functions take plain numbers', () => {
  expect(() => one('V', sum('E', 'R'))).toThrow('their units differ');
  expect(() => one('V', sum('E', 1))).toThrow('their units differ');
  expect(() => one('V', call('max', 'E', 'R'))).toThrow('their units differ');
  expect(() => one('1', call('ln', 'E'))).toThrow('must be a plain number');
  expect(() => one('1', power(2, 'E'))).toThrow('must be a plain number');
});

test('roots, powers and sizes keep their units', () => {
  expect(one('V', root(power('E', 2))).answer.value).toBe(5);
  expect(one('W', quotient(power('E', 2), 'R')).answer.value).toBe(0.0125);
  expect(one('V', call('abs', difference('E', product(2, 'E')))).answer.value).toBe(5);
});

test('a symbol stands for one value, and is known before it is used', () => {
  expect(() =>
    workOut('test', (sheet) => {
      sheet.give({ symbol: 'E', meaning: 'one', value: 1, unit: 'V' });
      sheet.give({ symbol: 'E', meaning: 'two', value: 2, unit: 'V' });
      return {};
    }),
  ).toThrow('E is named twice');
  expect(() => one('V', sum('U'))).toThrow('U was not found before it is used');
});

test('no step rounds what a later one uses', () => {
  const { answer } = workOut('test', (sheet) => {
    sheet.give({ symbol: 'E', meaning: 'source', value: 1, unit: 'V' });
    sheet.find({ symbol: 'a', meaning: 'a third', unit: 'V', formula: quotient('E', 3), rule });
    sheet.find({ symbol: 'b', meaning: 'whole', unit: 'V', formula: product(3, 'a'), rule });
    return {};
  });
  expect(answer.value).toBe(1);
});

test('a line has as many digits as make it give the printed result', () => {
  const { steps } = workOut('test', (sheet) => {
    sheet.give({ symbol: 'E', meaning: 'source', value: 1, unit: 'V' }, 'found');
    sheet.give({ symbol: 'a', meaning: 'near it', value: 0.999_876_54, unit: 'V' }, 'found');
    sheet.find({ symbol: 'd', meaning: 'gap', unit: 'V', formula: difference('E', 'a'), rule });
    return {};
  });
  const [step] = steps;
  expect(step?.kind === 'calculation' && step.inputs[1]?.digits).toBe(8);
});

test('a value that is none is refused by what it means', () => {
  const withValue = (value: number) =>
    workOut('test', (sheet) => {
      sheet.give({ symbol: 'E', meaning: 'source', value, unit: 'V' });
      return {};
    });
  expect(() => withValue(Number.NaN)).toThrow('“source” is NaN');
});
