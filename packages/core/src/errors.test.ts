import { expect, test } from 'vitest';
import { InputError, isInputError } from './errors.js';

test('carries code, path, sentence and place', () => {
  const error = new InputError('not-a-number', 'sweep.csv', 'Row 3 is no number.', {
    line: 3,
    column: 7,
  });
  expect(error).toBeInstanceOf(Error);
  expect({ ...error }).toEqual({
    name: 'InputError',
    code: 'not-a-number',
    path: 'sweep.csv',
    place: { line: 3, column: 7 },
  });
  expect(error.message).toBe('Row 3 is no number.');
});

test('is known again across copies of the package, whose classes differ', async () => {
  // A name of its own makes it a module of its own.
  const copy = './errors.js?copy';
  const other: typeof import('./errors.js') = await import(copy);
  const error = new other.InputError('empty', 'x', 'x is empty.');
  expect(error).not.toBeInstanceOf(InputError);
  expect(isInputError(error)).toBe(true);
  expect(other.isInputError(new InputError('empty', 'x', 'x is empty.'))).toBe(true);
});

test.each([undefined, null, 'empty', new Error('x'), { name: 'InputError', code: 'empty' }])(
  '%s is none',
  (caught) => {
    expect(isInputError(caught)).toBe(false);
  },
);
