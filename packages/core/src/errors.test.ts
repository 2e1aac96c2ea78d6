import { expect, test } from 'vitest';
import { InputError } from './errors.js';

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
