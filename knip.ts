import { readFileSync } from 'node:fs';
import type { KnipConfig } from 'knip';

/** The sources of a package's entries, as its manifest names them. */
function entriesOf(folder: string): string[] {
  const { exports } = JSON.parse(readFileSync(`packages/${folder}/package.json`, 'utf8'));
  return Object.keys(exports)
    .filter((key) => !key.endsWith('.json'))
    .map((key) => `src/${key === '.' ? 'index' : key.slice(2)}.ts`);
}

const config: KnipConfig = {
  ignoreExportsUsedInFile: true,
  workspaces: {
    '.': {
      entry: [
        'examples/*.{ts,mjs}',
        'examples/batch/*.mjs',
        'tests/history/writeRecords.mjs',
        'tests/bench/bareScoring.mjs',
        'scripts/demo.mjs',
        'scripts/calibrate.mjs',
        'scripts/sensitivity.mjs',
        'tests/**/*.{test,test-d,bench}.ts',
        'examples/browser/*.js',
      ],
      project: ['scripts/**', 'tests/**', 'examples/**'],
      ignoreDependencies: ['@arethetypeswrong/cli', '@biomejs/biome', 'cspell'],
      ignoreUnresolved: ['./core/index.js'],
      // Programs of the system, by which tests open pipes and pseudo-terminals, fetch Debian's packages, make certificates and verify units.
      ignoreBinaries: ['mkfifo', 'script', 'apt-get', 'openssl', 'systemd-analyze'],
    },
    'packages/core': { entry: entriesOf('core') },
    'packages/history': { entry: entriesOf('history') },
    'packages/jobs': { entry: entriesOf('jobs') },
    'packages/wording': { entry: entriesOf('wording') },
    'packages/explain': { entry: entriesOf('explain') },
    // The build puts `plainElements.ts` in place of Preact's runtime.
    'packages/drawings': { entry: [...entriesOf('drawings'), 'src/plainElements.ts'] },
    site: {
      entry: [
        'src/content/docs/**/*.mdx',
        'src/offline/serviceWorker.ts',
        'src/navigation/unfoldOwnGroup.ts',
        'integrations/*.mjs',
      ],
      project: ['src/**', 'integrations/**'],
    },
  },
};

export default config;
