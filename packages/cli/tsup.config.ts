import { defineConfig } from 'tsup';

export default defineConfig({
  entry: ['src/truesweep.ts'],
  format: ['esm'],
  target: 'node20',
  clean: true,
  silent: true,
});
