import { expect, test } from 'vitest';
import { reachedFrom } from './reachedFrom.js';

const joined = (from: string, to: string) => ({ id: `${from}${to}`, from, to, ohms: 1 });

test('a node without elements reaches itself alone', () => {
  expect([...reachedFrom([], 'a')]).toEqual(['a']);
});

test('goes along elements either way, whatever their order, and round loops', () => {
  const elements = [joined('c', 'd'), joined('c', 'b'), joined('a', 'b'), joined('d', 'a')];
  expect([...reachedFrom(elements, 'a')].sort()).toEqual(['a', 'b', 'c', 'd']);
});

test('does not reach what nothing joins to it', () => {
  expect(reachedFrom([joined('a', 'b'), joined('c', 'd')], 'a').has('c')).toBe(false);
});
