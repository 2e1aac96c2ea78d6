import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const page = readFileSync('site/src/content/docs/developers/scale.mdx', 'utf8');

/** Figures of a row of the page's tables. */
function numbersOf(row: string): readonly number[] {
  const line = page.split('\n').find((one) => one.startsWith(`| ${row} |`));
  expect(line, row).toBeDefined();
  const figures = line!.slice(row.length + 4).matchAll(/\d[\d,]*(?:\.\d+)?/g);
  return [...figures].map(([text]) => Number(text.replaceAll(',', '')));
}

test('the arithmetic of ten million recordings is right', () => {
  const [small = 0] = numbersOf('92 KB');
  const [large = 0] = numbersOf('0.92 MB');
  const [waiting = 0] = numbersOf('memory of Redis for each recording that waits');
  const million = 1e6;
  const [, ofSmall, hours] = numbersOf('judging, 92 KB each');
  expect(ofSmall).toBe(small);
  expect(hours).toBe(Math.round((10 * million) / small));
  expect(page).toContain(`${((10 * million) / small / 8).toFixed(1)} h on sixteen`);
  const [, ofLarge, days] = numbersOf('judging, 0.92 MB each');
  expect(ofLarge).toBe(large);
  expect(days).toBeCloseTo((10 * million) / large / 24, 1);
  expect(numbersOf('Redis, all waiting at once')).toEqual([
    10 * million,
    waiting,
    (10 * waiting) / 1000,
  ]);
  expect(numbersOf('Redis, putting no faster than is judged').slice(0, 2)).toEqual([1e5, waiting]);
  expect(numbersOf('results')).toEqual([10 * million, 4.7, 47]);
  expect(numbersOf('records of a history')).toEqual([10 * million, 0.81, 8.1]);
  expect(page).toContain('39,000 to a folder');
  expect((10 * million) / 256).toBeCloseTo(39_000, -3);
  // Pairs over 2 to the 256th.
  const pairs = (10 * million) ** 2 / 2;
  expect(pairs).toBe(5e13);
  expect(Math.log10(pairs) - 256 * Math.log10(2)).toBeCloseTo(Math.log10(4e-64), 1);
});
