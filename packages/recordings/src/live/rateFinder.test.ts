import { expect, test } from 'vitest';
import { rateFinder } from './rateFinder.js';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const rows = (unit: string) =>
  bytesOf(
    `t (ms),signal (${unit})\n${Array.from({ length: 40 }, (_, i) => `${i},${100 + i}\n`).join('')}`,
  );

test('lines that parse are right, also where their counts have no scale yet', () => {
  expect(rateFinder({})(rows('mV'))).toBe(true);
  expect(rateFinder({})(rows('counts'))).toBe(true);
});

test('what is no text is wrong, and too little tells nothing', () => {
  const noise = Uint8Array.from({ length: 200 }, (_, i) => (i * 37) % 256);
  expect(rateFinder({})(noise)).toBe(false);
  const finder = rateFinder({});
  expect(finder(bytesOf('0,1\n'))).toBeUndefined();
  expect(finder(bytesOf('words that are no rows of numbers at all, without an end'))).toBe(
    undefined,
  );
});
