import { expect, test } from 'vitest';
import { pathBetween } from './pathBetween.js';

const part = (id: string, from: string, to: string) => ({ id, from, to, ohms: 1 });
const ring = [part('1', 'a', 'b'), part('2', 'c', 'b'), part('3', 'c', 'a'), part('4', 'd', 'e')];

test('goes along parts in either direction and never round in a circle', () => {
  expect(pathBetween(ring, 'a', 'c')?.map(({ id }) => id)).toEqual(['1', '2']);
  expect(pathBetween(ring, 'c', 'a')?.map(({ id }) => id)).toEqual(['2', '1']);
});

test('is empty within one node and nothing where no way leads', () => {
  expect(pathBetween(ring, 'b', 'b')).toEqual([]);
  expect(pathBetween(ring, 'a', 'e')).toBeUndefined();
});
