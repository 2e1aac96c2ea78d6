import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { runExample } from './runExample.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const readme = readFileSync(`${root}README.md`, 'utf8');

/** The contents of the fenced blocks with this info string. */
function blocks(info: string): string[] {
  const fence = new RegExp(`^\`\`\`${info}\\n(.*?)^\`\`\`$`, 'gms');
  return [...readme.matchAll(fence)].map(([, text]) => text!);
}

const examples = blocks('ts');

test('README shows the library in use', () => {
  expect(examples.length).toBeGreaterThan(0);
});

test.each(examples)('README example %#', async (code) => {
  await runExample(code, {});
});

const commands = blocks('sh')
  .flatMap((block) => block.split('\n'))
  .filter((line) => line.startsWith('node '));

test.each(commands)('README command: %s', (line) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, line.split(' ').slice(1), {
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
