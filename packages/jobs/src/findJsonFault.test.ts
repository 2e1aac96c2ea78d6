import { describe, expect, test } from 'vitest';
import { findJsonFault } from './findJsonFault.js';

describe('texts that JSON.parse takes', () => {
  test.each([
    '{}',
    ' [1, -2.5e3, "a\\n\\u00e9", null, true, {"b": [[]]}] \n',
    '"Ω"',
    '0',
    '{"a":{"b":"x"},"c":[]}',
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
  ])('%j is faulty at %i', (text, at) => {
    expect(() => JSON.parse(text)).toThrow();
    expect(findJsonFault(text)).toBe(at);
  });
});

test('a flood of brackets is refused, not followed', () => {
  expect(findJsonFault('['.repeat(1_000_000))).toBe(101);
});
