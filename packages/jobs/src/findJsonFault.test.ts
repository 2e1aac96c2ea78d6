import { describe, expect, test } from 'vitest';
import { findJsonFault } from './findJsonFault.js';

describe('texts that JSON.parse takes', () => {
  test.each([
    '{}',
    ' [1, -2.5e3, "a\\n\\u00e9", null, true, {"b": [[]]}] \n',
    '"Ω"',
    '0',
    '{"a":{"b":"x"},"c":[]}',
    '"\u007f\u0085\u009b\u2028\u202e\ud83d"',
    '{"a":{"a":1},"b":[{"a":1},{"a":1}],"A":1,"":1,"__proto__":1,"toString":2}',
  ])('%s has no fault', (text) => {
    expect(() => JSON.parse(text)).not.toThrow();
    expect(findJsonFault(text)).toBeUndefined();
  });
});

describe('texts that JSON.parse refuses', () => {
  test.each([
    ['', 0],
    ['{"a": 1,}', 8],
    ['{"a": 1 "b": 2}', 8],
    ['{a: 1}', 1],
    ['[1, 2', 5],
    ['{"a": 01}', 6],
    ['{"a": 4k7}', 6],
    ['{} x', 3],
    ["{'a': 1}", 1],
    ['{"a": "x\ny"}', 6],
    ['// note\n{}', 0],
    ['"\u001f"', 0],
    ['"\\x41"', 0],
    ['"\\u12"', 0],
    ['["open', 1],
    ['{"a" 1}', 5],
  ])('%j is faulty at %i', (text, at) => {
    expect(() => JSON.parse(text)).toThrow();
    expect(findJsonFault(text)).toEqual({ at });
  });
});

test('a flood of brackets is refused, not followed', () => {
  expect(findJsonFault('['.repeat(1_000_000))).toEqual({ at: 101 });
});

describe('a field that stands twice in a group', () => {
  test.each([
    ['{"a": 1, "b": 2, "a": 3}', 17, 'a'],
    ['[{"b": {"limiter": 1, "limiter": 2}}]', 22, 'limiter'],
    ['{"a": 1, "\\u0061": 2}', 9, 'a'],
    ['{"__proto__": 1, "__proto__": 2}', 17, '__proto__'],
  ])('%s', (text, at, twice) => {
    expect(findJsonFault(text)).toEqual({ at, twice });
  });

  test('matters less than what comes before it', () => {
    expect(findJsonFault('{"a": 01, "a": 1}')).toEqual({ at: 6 });
  });
});

describe('texts of any size are looked through in one go', () => {
  const size = 20_000_000;

  test.each([
    ['one text', JSON.stringify('a'.repeat(size))],
    ['escapes', `"${'\\n'.repeat(size / 2)}"`],
    ['characters of two units', JSON.stringify('🔧'.repeat(size / 2))],
    ['a number', '1'.repeat(size)],
    ['a list', `[${'1,'.repeat(size / 2)}1]`],
    ['space', `${' '.repeat(size)}1`],
  ])('%s', (_, text) => {
    expect(findJsonFault(text)).toBeUndefined();
  });

  test('and a fault at the end is found', () => {
    expect(findJsonFault(`"${'a'.repeat(size)}`)).toEqual({ at: 0 });
  });
});
