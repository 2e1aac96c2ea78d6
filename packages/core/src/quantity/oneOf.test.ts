import { expect, test } from 'vitest';
import { oneOf } from './oneOf.js';

test('one of the words comes back', () => {
  expect(oneOf('up', ['up', 'down'], 'way')).toBe('up');
});

test.each([
  ['left', 'unknown-choice', 'way is left; it must be one of up, down.'],
  ['toString', 'unknown-choice', /toString/],
  [undefined, 'missing', /undefined/],
])('refuses %s', (value, code, message) => {
  const call = () => oneOf(value as string, ['up', 'down'], 'way');
  expect(call).toThrow(expect.objectContaining({ name: 'InputError', code, path: 'way' }));
  expect(call).toThrow(message);
});
