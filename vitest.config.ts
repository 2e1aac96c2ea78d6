import { readdirSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { soak } from './tests/counts.js';

const packages = fileURLToPath(new URL('./packages/', import.meta.url));

/** Every entry of the packages with the source that it is built of, longer names first. */
const alias = Object.fromEntries(
  readdirSync(packages)
    .flatMap((folder) => {
      const { name, exports } = JSON.parse(
        readFileSync(join(packages, folder, 'package.json'), 'utf8'),
      );
      return Object.keys(exports)
        .filter((key) => !key.endsWith('.json'))
        .map((key) => [
          name + key.slice(1),
          join(packages, folder, 'src', `${key === '.' ? 'index' : key.slice(2)}.ts`),
        ]);
    })
    .sort(([a = ''], [b = '']) => b.length - a.length),
);

const project = (name: string, include: string[], more = {}) => ({
  extends: true as const,
  test: { name, include, ...more },
});

export default defineConfig({
  // Tests read the packages' sources, so that they need no build and coverage lands on the sources.
  resolve: { alias },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    testTimeout: 60_000 * soak,
    hookTimeout: 60_000,
    expect: { poll: { timeout: 15_000 } },
    passWithNoTests: true,
    setupFiles: ['tests/randomSeed.ts'],
    // The runner leaves one processor free by itself; of two that is half of them.
    maxWorkers: availableParallelism(),
    coverage: { include: ['packages/*/src/**'] },
    projects: [
      project('unit', ['packages/*/src/**/*.test.{ts,tsx}', 'site/src/**/*.test.{ts,tsx}']),
      project('properties', ['tests/properties/**/*.test.ts']),
      project('reference', ['tests/reference/**/*.test.ts']),
      project('corpus', ['tests/corpus/**/*.test.ts']),
      project('examples', ['examples/**/*.test.ts']),
      project('package', ['tests/package/**/*.test.ts'], {
        globalSetup: ['tests/package/setup.ts'],
      }),
      project('docs', ['tests/docs/**/*.test.ts']),
      project('browser', ['tests/browser/**/*.test.ts'], {
        globalSetup: ['tests/browser/setup.ts'],
      }),
      project('types', [], {
        typecheck: {
          enabled: true,
          only: true,
          include: ['tests/types/**/*.test-d.ts'],
          tsconfig: 'tests/types/tsconfig.json',
        },
      }),
      project('bench-site', [], {
        benchmark: { enabled: true, include: ['tests/bench/site/*.bench.ts'] },
        globalSetup: ['tests/browser/setup.ts'],
      }),
      {
        ...project('bench', [], {
          benchmark: { enabled: true, include: ['tests/bench/*.bench.ts'] },
        }),
        // Measures what is published: between separate sources the runner puts a call for every imported name.
        resolve: {
          alias: {
            '@truesweep/core': join(packages, 'core/dist/index.js'),
            '@truesweep/recordings': join(packages, 'recordings/dist/index.js'),
          },
        },
      },
    ],
  },
});
