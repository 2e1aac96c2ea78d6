import { expect, test } from 'vitest';
import { squareCode } from './squareCode.js';

test('has the three squares by which a reader finds it (ISO/IEC 18004, 6.3.3: 7 by 7, a ring and a core)', () => {
  const path = squareCode('https://example.org/truesweep/#v1&track=4k7') ?? '';
  const dark = new Set([...path.matchAll(/M(\d+),(\d+)/g)].map(([, x, y]) => `${x},${y}`));
  const size = Math.max(...[...dark].map((at) => Number(at.split(',')[0]))) + 1;
  expect((size - 17) % 4).toBe(0);
  const finder = (left: number, top: number) => {
    for (let x = 0; x < 7; x++)
      for (let y = 0; y < 7; y++) {
        const ring = Math.max(Math.abs(x - 3), Math.abs(y - 3));
        expect(dark.has(`${left + x},${top + y}`), `${left + x},${top + y}`).toBe(ring !== 2);
      }
  };
  finder(0, 0);
  finder(size - 7, 0);
  finder(0, size - 7);
});

test('a text that is too long for any code gives none', () => {
  expect(squareCode('x'.repeat(8000))).toBeUndefined();
});
