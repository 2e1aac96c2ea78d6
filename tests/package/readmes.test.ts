import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { machineNode, packageFolders, readManifest, run } from './tarballs.js';
import { unpackedFolder } from './unpacked.js';

const names = packageFolders.map((folder) => readManifest(folder).name);

/** The first fenced block with this info string. */
function block(info: string, text: string): string | undefined {
  return new RegExp(`^\`\`\`${info}\\n(.*?)^\`\`\`$`, 'ms').exec(text)?.[1];
}

test.each(names)('the example in the README of %s prints what stands below it', (name) => {
  const readme = readFileSync(join(unpackedFolder(name), 'README.md'), 'utf8');
  const folder = join(inject('scratch'), `readme-${name.split('/')[1]}`);
  mkdirSync(folder);
  const program = block('js', readme);
  const command = block('sh example', readme);
  let args = ['example.mjs'];
  if (program) writeFileSync(join(folder, 'example.mjs'), program);
  else {
    // What `npx` would find: the program that the manifest names.
    const [, bin, ...rest] = command!.trim().split(' ');
    const { bin: bins } = JSON.parse(
      readFileSync(join(unpackedFolder(name), 'package.json'), 'utf8'),
    );
    args = [join(unpackedFolder(name), bins[bin!]), ...rest];
  }
  const { status, stdout, stderr } = run(machineNode(), args, folder);
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(stdout).toBe(block('text', readme));
});
