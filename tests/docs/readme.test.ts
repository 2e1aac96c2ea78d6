import { spawnSync } from 'node:child_process';
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { runExample } from './runExample.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const readme = readFileSync(`${root}README.md`, 'utf8');

/** The contents of the fenced blocks with this info string. */
function blocks(info: string, text = readme): string[] {
  const fence = new RegExp(`^\`\`\`${info}\\n(.*?)^\`\`\`$`, 'gms');
  return [...text.matchAll(fence)].map(([, block]) => block!);
}

const docs = fileURLToPath(new URL('../../site/src/content/docs/', import.meta.url));

/** The pages of the site that are written by hand. */
const pages = globSync('**/*.mdx', {
  cwd: docs,
  // Written by a program, perhaps at this moment: the site is built beside these tests.
  exclude: (path) => path === 'reference',
}).map((path) => readFileSync(join(docs, path), 'utf8'));

const examples = blocks('ts');

test('README shows the library in use', () => {
  expect(examples.length).toBeGreaterThan(0);
});

test.each(pages.flatMap((text) => blocks('ts', text)))('example of a page %#', async (code) => {
  await runExample(code, {});
});

test.each(examples)('README example %#', async (code) => {
  await runExample(code, {});
});

const commands = [readme, ...pages]
  .flatMap((text) => blocks('sh', text))
  .flatMap((block) => block.split('\n'))
  .filter((line) => line.startsWith('node '));

test('README and pages show commands', () => {
  expect(commands.length).toBeGreaterThan(4);
});

test.each([...new Set(commands)])('command shown: %s', (line) => {
  const words = line.match(/"[^"]*"|\S+/g)!.map((word) => word.replace(/^"(.*)"$/, '$1'));
  const { status, stdout, stderr } = spawnSync(process.execPath, words.slice(1), {
    cwd: root,
    encoding: 'utf8',
  });
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(stdout).not.toBe('');
});

test('README shows what `npm start` prints', () => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['scripts/demo.mjs'], {
    cwd: root,
    encoding: 'utf8',
  });
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(blocks('text npm-start')).toEqual([stdout]);
});
