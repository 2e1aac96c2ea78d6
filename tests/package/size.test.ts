import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build, type Rolldown } from 'vite';
import { describe, expect, test } from 'vitest';
import { root } from './tarballs.js';

const core = join(root, 'packages', 'core', 'dist', 'index.js');
const entry = 'virtual:entry';

/** What a page would ship that imports all of core's built entry, minified. */
async function bundle(): Promise<Rolldown.OutputChunk> {
  const { output } = (await build({
    configFile: false,
    logLevel: 'silent',
    root,
    build: {
      write: false,
      minify: true,
      modulePreload: false,
      rolldownOptions: {
        input: entry,
        preserveEntrySignatures: 'strict',
        output: { format: 'es' },
      },
    },
    plugins: [
      {
        name: 'entry',
        resolveId: (id) => (id === entry ? `\0${entry}` : null),
        load: (id) => (id === `\0${entry}` ? `export * from ${JSON.stringify(core)};` : null),
      },
    ],
  })) as Rolldown.RolldownOutput;
  const [chunk, ...more] = output;
  expect(more).toEqual([]);
  return chunk;
}

describe('size of core, minified and gzipped', () => {
  test('all of it stays under 40 KB', async () => {
    const { code, exports } = await bundle();
    expect(exports.length).toBeGreaterThanOrEqual(20);
    const size = gzipSync(code, { level: 9 }).length / 1000;
    console.log(`all of core: ${size.toFixed(2)} KB gzipped (less than 40 KB is asked)`);
    expect(size).toBeLessThan(40);
  });

  test('the main entry imports no other package', async () => {
    const { imports, dynamicImports, code } = await bundle();
    expect([...imports, ...dynamicImports]).toEqual([]);
    expect(code).not.toMatch(/\brequire\(/);
    for (const name of builtinModules) expect(code).not.toContain(`"node:${name}"`);
    expect(code).not.toContain('valibot');
  });
});
