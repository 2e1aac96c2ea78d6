import { writeFile } from 'node:fs/promises';
import { defineConfig } from 'tsup';
import { jobJsonSchema } from './src/jobJsonSchema.js';

export default defineConfig({
  entry: ['src/index.ts', 'src/node.ts'],
  format: ['esm', 'cjs'],
  dts: true,
  target: 'node20',
  clean: true,
  silent: true,
  onSuccess: () =>
    writeFile('dist/job.schema.json', `${JSON.stringify(jobJsonSchema(), undefined, 2)}\n`),
});
