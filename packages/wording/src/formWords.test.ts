import { expect, test } from 'vitest';
import { unknownEntriesSentence } from './formWords.js';

test('of many names in a link a few are listed and the others counted', () => {
  const names = Array.from({ length: 10_000 }, (_, i) => `name${i}`);
  expect(unknownEntriesSentence(names)).toContain('name4 and 9995 more.');
  expect(unknownEntriesSentence(names.slice(0, 5))).not.toContain('more');
  expect(unknownEntriesSentence(names.slice(0, 6))).toContain('and 1 more');
});

test('of a long name the begin is listed', () => {
  expect(unknownEntriesSentence(['x'.repeat(31)])).toContain(`: ${'x'.repeat(30)}….`);
  expect(unknownEntriesSentence(['x'.repeat(30)])).toContain(`: ${'x'.repeat(30)}.`);
});
