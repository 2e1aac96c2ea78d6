import { readdirSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { soak } from './tests/counts.js';

const packages = fileURLToPath(new URL('./packages/', import.meta.url));

/** Every entry of the packages, longer names first. */
const entries = readdirSync(packages)
  .flatMap((folder) => {
    const { name, exports } = JSON.parse(
      readFileSync(join(packages, folder, 'package.json'), 'utf8'),
    ) as { name: string; exports: object };
    return Object.keys(exports)
      .filter((key) => !key.endsWith('.json'))
      .map((key) => ({
        name: name + key.slice(1),
        folder,
        file: key === '.' ? 'index' : key.slice(2),
      }));
  })
  .sort((a, b) => b.name.length - a.name.length);

/** Every entry with the source that it is built of. */
const alias = Object.fromEntries(
  entries.map(({ name, folder, file }) => [name, join(packages, folder, 'src', `${file}.ts`)]),
);

/**
 * What judges thousands of sweeps takes core as it is built, where `npm test` has just built it: between separate sources
 * the runner puts a call for every imported name, which takes a sixth of the time.
 */
const judging = {
  alias: Object.fromEntries(
    process.env.TRUESWEEP_BUILT_CORE
      ? entries
          .filter(({ folder }) => folder === 'core')
          .map(({ name, folder, file }) => [name, join(packages, folder, 'dist', `${file}.js`)])
      : [],
  ),
};

const project = (name: string, include: string[], more = {}) => ({
  extends: true as const,
  test: { name, include, ...more },
});

/** Files that take longest, though they are short: on a fresh clone the runner knows sizes alone and would begin them last. */
const longest = /browser\/(pages|calculators)\.test\.ts$/;

const isOrderAsked = process.argv.some((word) => word.startsWith('--sequence.'));

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isLong = ({ moduleId }: TestSpecification) => longest.test(moduleId);
    return [...sorted.filter(isLong), ...sorted.filter((file) => !isLong(file))];
  }
}

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
    // An order that is asked for goes before it.
    sequence: isOrderAsked ? {} : { sequencer: LongestFirst },
    coverage: { include: ['packages/*/src/**'] },
    projects: [
      // Files of one process share its modules, which each would read anew otherwise: half the time. So no test may leave
      // anything behind in a module or a global.
      project('unit', ['packages/*/src/**/*.test.{ts,tsx}', 'site/src/**/*.test.{ts,tsx}'], {
        isolate: false,
      }),
      project('reference', ['tests/reference/**/*.test.ts'], { isolate: false }),
      {
        ...project('properties', ['tests/properties/**/*.test.ts'], { isolate: false }),
        resolve: judging,
      },
      {
        ...project('corpus', ['tests/corpus/**/*.test.ts'], { isolate: false }),
        resolve: judging,
      },
      project('examples', ['examples/**/*.test.ts']),
      project('package', ['tests/package/**/*.test.ts'], {
        globalSetup: ['tests/package/setup.ts'],
      }),
      project('docs', ['tests/docs/**/*.test.ts']),
      project('controller', ['tests/controller/**/*.test.ts'], {
        globalSetup: ['tests/controller/setup.ts'],
      }),
      project('live', ['tests/live/**/*.test.ts'], {
        globalSetup: ['tests/controller/setup.ts'],
      }),
      project('batch', ['tests/batch/**/*.test.ts']),
      project('history', ['tests/history/**/*.test.ts']),
      project('queue', ['tests/queue/**/*.test.ts'], { globalSetup: ['tests/queue/setup.ts'] }),
      project('browser', ['tests/browser/**/*.test.ts'], {
        globalSetup: ['tests/browser/setup.ts'],
      }),
      project('pictures', ['tests/pictures/*.test.ts'], {
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
