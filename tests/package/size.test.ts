import { readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build, type Rolldown } from 'vite';
import { describe, expect, test } from 'vitest';
import { root } from './tarballs.js';

const entry = 'virtual:entry';

/** What a page would ship that imports these names, or all, of a built entry of a package, with what that imports, minified. */
async function bundle(
  name: string,
  names?: readonly string[],
  folder = 'core',
): Promise<Rolldown.OutputChunk> {
  const wanted = names ? `{ ${names.join(', ')} }` : '*';
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
        load: (id) =>
          id === `\0${entry}`
            ? `export ${wanted} from ${JSON.stringify(join(root, 'packages', folder, 'dist', `${name}.js`))};`
            : null,
      },
    ],
  })) as Rolldown.RolldownOutput;
  const [chunk, ...more] = output;
  expect(more).toEqual([]);
  return chunk;
}

/** Gzipped, in KB of 1,024 bytes. */
const kilobytes = ({ code }: Rolldown.OutputChunk) => gzipSync(code, { level: 9 }).length / 1024;

/** Asserts what holds of a size and prints it with what is asked, KB. */
function keepsWithin(name: string, chunk: Rolldown.OutputChunk, holds: number, goal: number): void {
  const size = kilobytes(chunk);
  console.log(
    `${name}: ${size.toFixed(2)} KB gzipped (holds: at most ${holds}, goal: at most ${goal})`,
  );
  expect(size).toBeLessThanOrEqual(holds);
}

/**
 * Entries whole, with what holds of them and what is asked, KB. Without any check of its circuit `circuit` weighs 2.8: every refusal says
 * what was wrong, where, and what would be right, and those sentences are the rest. Of `score` a third are checks, causes and advice, half is what
 * reads a recording and tells a sensor's departures from the recording's own (capture, motion, path, departures). `index` is all uses together, none of them more than 15 % of it: who wants less
 * takes an entry.
 */
const entries: readonly (readonly [name: string, holds: number, goal: number])[] = [
  ['circuit', 4.6, 3],
  ['expectation', 6.3, 5.5],
  ['model', 13.1, 12],
  ['score', 41.8, 25],
  ['winding', 4, 4],
  ['twoState', 4, 4],
  ['bounce', 4, 4],
  ['contactless', 4, 4],
  ['codes', 4, 4],
  ['thermistor', 3.4, 4],
  ['pullUp', 3.6, 4],
  ['thermistorFit', 3.2, 4],
  ['thermistorVerdict', 5.8, 4],
  ['pressure', 4, 4],
  ['pressureVerdict', 4.1, 4],
  ['atmosphere', 2, 4],
  ['judgement', 1.9, 4],
  ['measures', 3.8, 4],
  ['trend', 3.6, 4],
  ['index', 95, 60],
];

describe('size of core, minified and gzipped', () => {
  test.each(entries)('the entry %s: at most %d KB', async (name, holds, goal) => {
    keepsWithin(name, await bundle(name), holds, goal);
  });

  test('the main entry lets go of what isn’t used: the operating point weighs no more by it', async () => {
    const chunk = await bundle('index', ['operatingPoint']);
    keepsWithin('operatingPoint of the main entry', chunk, 4.5, 3);
    expect(chunk.exports).toEqual(['operatingPoint']);
  });

  test('all of it is one module that a page can ship', async () => {
    const { exports } = await bundle('index');
    expect(exports).toContain('scoreSweep');
    expect(exports).toContain('operatingPoint');
  });

  test('the main entry imports no other package', async () => {
    const { imports, dynamicImports, code } = await bundle('index');
    expect([...imports, ...dynamicImports]).toEqual([]);
    expect(code).not.toMatch(/\brequire\(/);
    for (const name of builtinModules) expect(code).not.toContain(`"node:${name}"`);
    expect(code).not.toContain('valibot');
  });
});

describe('size of explain in a page', () => {
  test('the package with what it takes of mathjs: at most 45 KB', () => {
    const file = readFileSync(join(root, 'packages', 'explain', 'dist', 'browser.min.js'));
    const size = gzipSync(file, { level: 9 }).length / 1024;
    console.log(`explain: ${size.toFixed(2)} KB gzipped (holds: at most 45, goal: at most 70)`);
    expect(size).toBeLessThanOrEqual(45);
  });

  test('with all that it takes of core and words as well: at most 81 KB; no page needs all of it', async () => {
    keepsWithin('explain with core and words', await bundle('index', undefined, 'explain'), 81, 70);
  });

  test('a single working with all it needs: at most 27 KB', async () => {
    const chunk = await bundle('index', ['explainOperatingPoint', 'workingHtml'], 'explain');
    keepsWithin('explainOperatingPoint with workingHtml', chunk, 27, 70);
  });

  test('what writes a working that was made elsewhere has no mathjs', async () => {
    const chunk = await bundle('written', undefined, 'explain');
    keepsWithin('explain/written', chunk, 7, 10);
    expect(chunk.code).not.toContain('siemens');
  });
});
