import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { builtFiles, pathBelow } from './builtFiles.mjs';

/**
 * Builds the service worker with the list of what it keeps from its first visit on: every page and all that they need. The rest it keeps
 * once it was looked at.
 *
 * @returns {import('astro').AstroIntegration}
 */
export function offline() {
  let base = '/';
  return {
    name: 'offline',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = `${config.base.replace(/\/$/, '')}/`;
      },
      'astro:build:done': async ({ dir, logger }) => {
        const kept = (await builtFiles(dir)).filter((path) => isKept(pathBelow(dir, path)));
        const lines = await Promise.all(kept.map((path) => lineOf(dir, path)));
        await build({
          configFile: false,
          logLevel: 'warn',
          define: {
            keptBelow: JSON.stringify(base),
            keptFiles: JSON.stringify(lines.join('\n')),
            'process.env.NODE_ENV': '"production"',
          },
          build: {
            outDir: fileURLToPath(dir),
            emptyOutDir: false,
            copyPublicDir: false,
            lib: {
              entry: fileURLToPath(new URL('../src/offline/serviceWorker.ts', import.meta.url)),
              // As a classic script: of a library's modules the spaces are left in.
              formats: ['iife'],
              name: 'serviceWorker',
              fileName: () => 'service-worker.js',
            },
          },
        });
        logger.info(`${lines.length} files are kept for use without a connection`);
      },
    },
  };
}

/** The address of a file below the site's and, where the build gives its name no hash, one of what it contains, of 48 bits. */
async function lineOf(dir, path) {
  const below = pathBelow(dir, path);
  if (below.startsWith('_astro/')) return below;
  const hash = createHash('sha256').update(await readFile(path));
  return `${below.replace(/(^|\/)index\.html$/, '$1')} ${hash.digest('base64url').slice(0, 8)}`;
}

/**
 * Fragments of the search's index are many and small; they are kept once they were asked for. The search's own widgets no
 * page asks for.
 */
function isKept(path) {
  return !/^(404\.html|pagefind\/(fragment|index)\/|pagefind\/pagefind-(\w+-ui|ui|highlight)\.|robots|sitemap)/.test(
    path,
  );
}
