import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { runExample } from './runExample.js';

const readme = readFileSync(fileURLToPath(new URL('../../README.md', import.meta.url)), 'utf8');
const blocks = [...readme.matchAll(/^```ts\n(.*?)^```$/gms)].map(([, code]) => code!);

test('README shows the library in use', () => {
  expect(blocks.length).toBeGreaterThan(0);
});

test.each(blocks)('README example %#', async (code) => {
  await runExample(code, {});
});
