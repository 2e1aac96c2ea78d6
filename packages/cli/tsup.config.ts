import { writeFile } from 'node:fs/promises';
import { defineConfig } from 'tsup';
import { outputJsonSchema } from './src/outputJsonSchema.js';

export default defineConfig({
  // The worker is loaded by its file's name, beside the command.
  entry: { truesweep: 'src/truesweep.ts', judgeWorker: 'src/batch/judgeWorker.ts' },
  format: ['esm'],
  target: 'node20',
  clean: true,
  // It finds its binaries beside itself.
  external: ['@serialport/bindings-cpp'],
  sourcemap: true,
  // The maps lead to `src`, which is published too.
  esbuildOptions: (options) => {
    options.sourcesContent = false;
  },
  silent: true,
  onSuccess: () =>
    writeFile('dist/output.schema.json', `${JSON.stringify(outputJsonSchema(), undefined, 2)}\n`),
});
