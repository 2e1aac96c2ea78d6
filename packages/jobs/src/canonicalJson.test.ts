import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalJson } from './canonicalJson.js';

test('the order of fields makes no difference, that of a list does', () => {
  expect(canonicalJson({ b: [{ d: 1, c: 2 }], a: undefined })).toBe('{"b":[{"c":2,"d":1}]}');
  expect(canonicalJson([1, 2])).not.toBe(canonicalJson([2, 1]));
});

test('it reads as the same data', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
    }),
  );
});
