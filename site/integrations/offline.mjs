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
            revision: createHash('sha256')
              .update(await readFile(path))
              .digest('hex')
              .slice(0, 16),
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
              formats: ['es'],
              fileName: () => 'service-worker.js',
            },
          },
        });
        logger.info(`${entries.length} files are kept for use without a connection`);
      },
    },
  };
}

/** Fragments of the search's index are many and small; they are kept once they were asked for. */
function isKept(path) {
  return !/^(reference\/|404\.html|pagefind\/(fragment|index)\/|robots|sitemap)/.test(path);
}
