import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { soak } from './tests/counts.js';

const source = (path: string) => fileURLToPath(new URL(`./packages/${path}`, import.meta.url));

/** Tests read the packages' sources, so that they need no build and coverage lands on the sources. */
const alias = {
  '@truesweep/core/schema': source('core/src/schema.ts'),
  '@truesweep/core': source('core/src/index.ts'),
  '@truesweep/recordings': source('recordings/src/index.ts'),
  '@truesweep/jobs/node': source('jobs/src/node.ts'),
  '@truesweep/jobs': source('jobs/src/index.ts'),
  '@truesweep/wording': source('wording/src/index.ts'),
  '@truesweep/report': source('report/src/index.ts'),
  '@truesweep/drawings': source('drawings/src/index.ts'),
};

const project = (name: string, include: string[], more = {}) => ({
  extends: true as const,
  test: { name, include, ...more },
});

export default defineConfig({
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
      project('package', ['tests/package/**/*.test.ts']),
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
            '@truesweep/core': source('core/dist/index.js'),
            '@truesweep/recordings': source('recordings/dist/index.js'),
          },
        },
      },
    ],
  },
});
