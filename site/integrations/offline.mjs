import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { builtFiles, pathBelow } from './builtFiles.mjs';

/**
 * Builds the service worker with the list of what it keeps from its first visit on: every page but the library's reference, and
 * all that they need. The rest it keeps once it was looked at.
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
        const entries = await Promise.all(
          kept.map(async (path) => ({
            url: base + pathBelow(dir, path).replace(/(^|\/)index\.html$/, '$1'),
            revision: await revisionOf(dir, path),
          })),
        );
        await build({
          configFile: false,
          logLevel: 'warn',
          define: {
            precacheEntries: JSON.stringify(entries),
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
        logger.info(`${entries.length} files are kept for use without a connection`);
      },
    },
  };
}

/** What changes with a file: its name where the build gives it a hash, else one of what it contains. */
async function revisionOf(dir, path) {
  if (pathBelow(dir, path).startsWith('_astro/')) return null;
  const hash = createHash('sha256').update(await readFile(path));
  return hash.digest('hex').slice(0, 16);
}

/**
 * Fragments of the search's index are many and small; they are kept once they were asked for. The search's own widgets no
 * page asks for.
 */
function isKept(path) {
  return !/^(reference\/|404\.html|pagefind\/(fragment|index)\/|pagefind\/pagefind-(\w+-ui|ui|highlight)\.|robots|sitemap)/.test(
    path,
  );
}
