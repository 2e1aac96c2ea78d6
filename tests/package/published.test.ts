import { existsSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { describe, expect, inject, test } from 'vitest';
import { machineNode, packageFolders, readManifest, root, run } from './tarballs.js';

const scratch = { folder: inject('scratch'), tarballs: inject('tarballs') };

const libraries = packageFolders.filter((folder) => '.' in readManifest(folder).exports);

/** Every entry that a package offers, as it is written in an import. */
function entries(folder: string): string[] {
  const { name, exports } = readManifest(folder);
  return Object.keys(exports)
    .filter((key) => !key.endsWith('.json'))
    .map((key) => name + key.slice(1));
}

const byName = (folders: readonly string[]) =>
  folders.map((folder): [string, string] => [readManifest(folder).name, folder]);

describe.each(byName(packageFolders))('%s', (name) => {
  test('is clean for publint', async () => {
    const { buffer } = new Uint8Array(await readFile(scratch.tarballs[name]!));
    const { messages, pkg } = await publint({ pack: { tarball: buffer }, strict: true });
    expect(messages.map((message) => formatMessage(message, pkg))).toEqual([]);
  });
});

describe.each(byName(libraries))('%s', (name, folder) => {
  test('resolves with its types in every kind of import (attw)', () => {
    const args = [scratch.tarballs[name]!, '--profile', 'node16'];
    const { status, stdout, stderr } = run(bin('attw'), args, folder);
    expect(status, stdout + stderr).toBe(0);
  });

  test.each(entries(folder))('%s offers the same names to ESM and CJS', async (entry) => {
    const list = 'process.stdout.write(JSON.stringify(Object.keys(it).sort()))';
    await writeFile(join(scratch.folder, 'a.mjs'), `import * as it from '${entry}';\n${list}`);
    await writeFile(join(scratch.folder, 'a.cjs'), `const it = require('${entry}');\n${list}`);
    const esm = run(machineNode(), ['a.mjs'], scratch.folder);
    const cjs = run(machineNode(), ['a.cjs'], scratch.folder);
    expect(esm.stderr + cjs.stderr).toBe('');
    expect(JSON.parse(esm.stdout)).not.toEqual([]);
    expect(JSON.parse(cjs.stdout)).toEqual(JSON.parse(esm.stdout));
  });
});

describe('the command line', () => {
  const program = () => join('node_modules', '@truesweep', 'cli', 'dist', 'truesweep.js');
  const { version } = readManifest(join(root, 'packages', 'cli'));

  test.each([
    ['the pinned Node', () => process.execPath],
    ["the machine's own Node", machineNode],
  ])('runs from its tarball on %s', (_, node) => {
    const { status, stdout, stderr } = run(node(), [program(), '--version'], scratch.folder);
    expect(stderr).toBe('');
    expect(stdout.trim()).toBe(version);
    expect(status).toBe(0);
  });

  test('the two are different programs, and the own one is no older than promised', () => {
    expect(machineNode()).not.toBe(process.execPath);
    expect(existsSync(machineNode())).toBe(true);
    const major = Number(
      run(machineNode(), ['-p', 'process.versions.node'], root).stdout.split('.')[0],
    );
    expect(major).toBeGreaterThanOrEqual(20);
  });
});

function bin(name: string): string {
  return join(root, 'node_modules', '.bin', process.platform === 'win32' ? `${name}.cmd` : name);
}
