import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const root = fileURLToPath(new URL('..', import.meta.url));

/** The source of a script that leaves in a global of this name what `virtual:entry` exports, which the plugin resolves and loads. */
export async function bundledScript(name, plugin) {
  const { output } = await build({
    configFile: false,
    logLevel: 'silent',
    root,
    resolve: { alias: { '@truesweep/core': join(root, 'packages', 'core', 'src', 'index.ts') } },
    build: {
      write: false,
      minify: false,
      target: 'esnext',
      modulePreload: false,
      rolldownOptions: {
        input: 'virtual:entry',
        preserveEntrySignatures: 'strict',
        output: { format: 'iife', name },
      },
    },
    plugins: [{ name: 'entry', enforce: 'pre', ...plugin }],
  });
  return output[0].code;
}
