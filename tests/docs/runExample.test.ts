import { expect, test } from 'vitest';
import { runExample } from './runExample.js';

test('a kept promise passes and is counted', async () => {
  expect(await runExample('const a = b + 1; // => 3\n({ a }) // => { a: 3 }', { b: 2 })).toBe(2);
  expect(
    await runExample(
      "import { isDetermined } from '@truesweep/core';\nisDetermined(1) // => true",
      {},
    ),
  ).toBe(1);
  expect(await runExample('Float64Array.of(1, 2) // => Float64Array [1, 2]', {})).toBe(1);
  expect(await runExample('1 / 3 // => ≈ 0.333', {})).toBe(1);
});

test.each([
  '1 + 1 // => 3',
  'console.log(2) // => 3',
  'Float64Array.of(1, 2) // => Float64Array [1, 3]',
  '1 / 3 // => ≈ 0.334',
  'const a = { b: 1 }; // => { b: 2 }',
  'missing() // => 1',
])('a broken promise fails: %s', async (text) => {
  await expect(runExample(text, {})).rejects.toThrow();
});
