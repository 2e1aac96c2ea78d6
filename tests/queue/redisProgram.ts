import { spawnSync } from 'node:child_process';
import { existsSync, globSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { fetchDebianPackages, isDebian } from '../debianPackages.js';

/** A `redis-server` that runs here. */
export interface RedisProgram {
  readonly command: string;
  readonly env: NodeJS.ProcessEnv;
}

const cache = fileURLToPath(new URL('../../node_modules/.cache/truesweep/', import.meta.url));
const folder = join(cache, 'redis');
const failure = join(cache, 'redis-failed.txt');

let found: RedisProgram | { readonly why: string } | undefined;

/** The machine's, or the one fetched before, or fetched now where it is a Debian; else why there is none. */
export function redisProgram(): RedisProgram | { readonly why: string } {
  found ??= programIn('/usr') ?? programIn(join(folder, 'usr')) ?? fetched();
  return found;
}

function programIn(usr: string): RedisProgram | undefined {
  const command = join(usr, 'bin/redis-server');
  if (!existsSync(command)) return undefined;
  const libraries = globSync('lib/*-linux-gnu*/', { cwd: usr }).map((path) => join(usr, path));
  const env =
    usr === '/usr' ? process.env : { ...process.env, LD_LIBRARY_PATH: libraries.join(delimiter) };
  return spawnSync(command, ['--version'], { env }).status === 0 ? { command, env } : undefined;
}

function fetched(): RedisProgram | { readonly why: string } {
  const why = (reason: string) => ({ why: `no redis-server here, and ${reason}` });
  if (!isDebian()) return why('this is no Debian to fetch it for');
  // Without a connection every file of tests would wait for it anew.
  if (existsSync(failure) && Date.now() - statSync(failure).mtimeMs < 600_000)
    return why(readFileSync(failure, 'utf8'));
  try {
    fetchDebianPackages({
      title: 'Redis',
      wanted: ['redis-server'],
      needed:
        /^(redis-(server|tools)|lib(jemalloc|lzf|hiredis|atomic|lua5|ssl|systemd)[\d.]*(-\d)?(t64)?|lua-(cjson|bitop))$/,
      unneeded: ['./usr/share', './etc', './lib/systemd'],
      folder,
      isThere: () => programIn(join(folder, 'usr')) !== undefined,
    });
  } catch (error) {
    const reason = `fetching it failed: ${error instanceof Error ? error.message : error}`;
    mkdirSync(cache, { recursive: true });
    writeFileSync(failure, reason);
    return why(reason);
  }
  return programIn(join(folder, 'usr')) ?? why('the one that was fetched does not work here');
}
