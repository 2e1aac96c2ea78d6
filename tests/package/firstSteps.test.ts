import { spawn } from 'node:child_process';
import {
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { localRegistry } from './localRegistry.js';
import { machineNode, root } from './tarballs.js';

const page = readFileSync(join(root, 'site/src/content/docs/developers/first-steps.mdx'), 'utf8');
const readme = readFileSync(join(root, 'README.md'), 'utf8');

/** The fenced block with this info string. */
function block(info: string, text = page): string {
  const found = new RegExp(`^\`\`\`${info}\\n(.*?)^\`\`\`$`, 'ms').exec(text)?.[1];
  if (!found) throw new Error(`There is no block \`\`\`${info}.`);
  return found;
}

const folder = mkdtempSync(join(tmpdir(), 'truesweep-first-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Where npm and pnpm keep what they fetched: with other places the clone's modules would be fetched anew under the other tests' feet. */
function storePlaces(): Record<string, string> {
  const isPlace = (name: string): boolean => /^(HOME|XDG_\w+|PNPM_HOME)$/.test(name);
  const found = Object.entries(process.env).filter(([name, value]) => value && isPlace(name));
  return Object.fromEntries(found) as Record<string, string>;
}

/** Runs a block as someone would paste it, with the Node that the machine's owner installed. */
async function paste(
  commands: string,
  cwd: string,
  more: Readonly<Record<string, string>> = {},
): Promise<string> {
  const own = (process.env.PATH ?? '')
    .split(delimiter)
    .filter((place) => !/[\\/]node_modules([\\/]|$)/.test(place));
  const child = spawn('bash', ['-e', '-c', commands], {
    cwd,
    env: {
      ...storePlaces(),
      PATH: [dirname(machineNode()), ...own].join(delimiter),
      ...more,
    },
  });
  let out = '';
  let all = '';
  child.stdout.on('data', (text) => {
    out += text;
    all += text;
  });
  child.stderr.on('data', (text) => {
    all += text;
  });
  const status = await new Promise((end) => child.on('close', end));
  expect(status, all).toBe(0);
  return out;
}

test.skipIf(process.platform === 'win32')(
  'the page leads from a clone to a program that prints what it says, in under five minutes',
  async () => {
    const begun = performance.now();
    symlinkSync(root, join(folder, 'truesweep'), 'junction');
    await paste(block('sh first-steps in the clone'), folder);
    const { url, server } = await localRegistry(join(folder, 'registry'));
    try {
      await paste(block('sh first-steps in a project'), folder, {
        npm_config_registry: url,
        npm_config_cache: join(folder, 'cache'),
        npm_config_audit: 'false',
      });
    } finally {
      server.close();
    }
    const project = join(folder, 'my-bench');
    const installed = readdirSync(join(project, 'node_modules', '@truesweep')).sort();
    expect(installed).toEqual(readdirSync(join(root, 'packages')).sort());
    writeFileSync(join(project, 'first.mjs'), block('js first-steps'));
    const printed = await paste(block('sh first-steps run'), project);
    expect(printed.replaceAll('\u00a0', ' ')).toBe(block('text first-steps'));
    const minutes = (performance.now() - begun) / 60_000;
    console.log(`from a clone to the first program: ${(60 * minutes).toFixed(0)} s`);
    expect(minutes).toBeLessThan(5);
  },
  300_000,
);

test('the README says the same commands', () => {
  for (const info of ['sh first-steps in the clone', 'sh first-steps in a project'])
    expect(readme).toContain(block(info));
});
