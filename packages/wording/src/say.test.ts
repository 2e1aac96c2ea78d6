import { expect, test } from 'vitest';
import { say } from './say.js';

test('puts texts and numbers in, an escaped sign as it is meant', () => {
  expect(say`${'5 V'}\u00a0feeds ${2} of ${''}.`).toBe('5 V\u00a0feeds 2 of .');
});

test.each([
  [undefined, 'missing', 'words[1] is none; it must be a text or a number, after “ to ”.'],
  [Number.NaN, 'not-finite', 'words[1] is none; it must be a text or a number, after “ to ”.'],
  [{}, 'not-finite', /^words\[1\]/],
  [null, 'not-finite', /^words\[1\]/],
])('%s is refused with its place in the sentence', (word, code, message) => {
  const act = () => say`${'A'} to ${word as never}.`;
  expect(act).toThrow(expect.objectContaining({ name: 'InputError', code, path: 'words[1]' }));
  expect(act).toThrow(message);
});
