import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build, type Rolldown } from 'vite';
import { describe, expect, test } from 'vitest';
import { root } from './tarballs.js';

const core = join(root, 'packages', 'core', 'dist', 'index.js');
const entry = 'virtual:entry';

/** What a page would ship that imports these names, or all, of core's built entry, minified. */
async function bundle(names?: readonly string[]): Promise<Rolldown.OutputChunk> {
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
          id === `\0${entry}` ? `export ${wanted} from ${JSON.stringify(core)};` : null,
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

/** The circuit, what to expect of it and back again, and its ratings. */
const model = [
  'operatingPoint',
  'positionAt',
  'isDetermined',
  'InputError',
  'expectation',
  'expectedCurve',
  'expectedBand',
  'expectedWindows',
  'outputUncertainty',
  'drawOutput',
  'loadingErrors',
  'positionAtOutput',
  'carryToBench',
  'carryToVehicle',
  'derated',
  'wrongConnections',
  'chooseLimiter',
];

describe('size of core, minified and gzipped', () => {
  test('all of it is one module that a page can ship', async () => {
    const chunk = await bundle();
    keepsWithin('all of core', chunk, 73, 40);
    expect(chunk.exports).toContain('scoreSweep');
    expect(chunk.exports).toContain('operatingPoint');
  });

  test('circuit, expectation and ratings: the model, its inverse and the way to the vehicle fit a small page', async () => {
    keepsWithin('circuit, expectation and ratings', await bundle(model), 13.2, 12);
  });

  test('a page that scores ships expectation and scoring', async () => {
    keepsWithin('score', await bundle(['scoreSweep', 'expectation']), 36, 25);
  });

  test('the operating point alone leaves the rest of core behind', async () => {
    const chunk = await bundle(['operatingPoint']);
    keepsWithin('operatingPoint alone', chunk, 4.6, 3);
    expect(chunk.exports).toEqual(['operatingPoint']);
  });

  test('the main entry imports no other package', async () => {
    const { imports, dynamicImports, code } = await bundle();
    expect([...imports, ...dynamicImports]).toEqual([]);
    expect(code).not.toMatch(/\brequire\(/);
    for (const name of builtinModules) expect(code).not.toContain(`"node:${name}"`);
    expect(code).not.toContain('valibot');
  });
});
