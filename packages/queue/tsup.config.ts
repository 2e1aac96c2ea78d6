import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { defineConfig, type Options } from 'tsup';
import { writeDeclarations } from '../../scripts/writeDeclarations.js';

const folder = process.cwd();
rmSync(join(folder, 'dist'), { recursive: true, force: true });

const common = {
  target: 'node20',
  silent: true,
  sourcemap: true,
  // The maps lead to `src`, which is published too.
  esbuildOptions: (options) => {
    options.sourcesContent = false;
  },
} satisfies Options;

export default defineConfig([
  {
    ...common,
    // The judging process is loaded by its file's name, beside the others.
    entry: {
      index: 'src/index.ts',
      judgeProcess: 'src/worker/judgeProcess.ts',
      truesweepQueue: 'src/truesweepQueue.ts',
    },
    format: 'esm',
    onSuccess: async () => {
      writeDeclarations(folder, ['index']);
    },
  },
  {
    ...common,
    entry: { index: 'src/index.ts' },
    format: 'cjs',
    // What an ES module knows of where it lies.
    define: { 'import.meta.url': 'moduleAddress' },
    banner: {
      js: "'use strict';const moduleAddress = require('node:url').pathToFileURL(__filename).href;",
    },
  },
]);
