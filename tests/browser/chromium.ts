import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { arch, platform, tmpdir, userInfo } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import type { LaunchOptions } from 'playwright-core';

const require = createRequire(import.meta.url);

/** Where the registry package with a whole Chromium keeps its archives. */
function archivesFolder(): { folder: string; version: string } {
  const top = dirname(dirname(require.resolve('@sparticuz/chromium')));
  return { folder: join(top, 'bin'), version: require(join(top, 'package.json')).version };
}

/** Unpacks the archives into `folder`; the package's own unpacker writes to the temporary folder of the moment. */
async function unpack(archives: string, folder: string) {
  const { inflate } = await import('@sparticuz/chromium');
  const before = process.env.TMPDIR;
  process.env.TMPDIR = folder;
  try {
    const names = await readdir(archives);
    await Promise.all(names.map((name) => inflate(join(archives, name))));
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  }
}

/**
 * The Chromium of the registry package, unpacked once into a folder named after its version. Each process
 * unpacks beside it and renames, so that no one ever meets a half-filled folder.
 */
async function carriedBrowser(): Promise<LaunchOptions> {
  const { folder: archives, version } = archivesFolder();
  const folder = join(tmpdir(), `truesweep-chromium-${version}-${userInfo().uid}`);
  if (!existsSync(folder)) {
    const partial = `${folder}.${process.pid}`;
    await mkdir(partial, { recursive: true });
    await unpack(archives, partial);
    const fonts = join(partial, 'fonts', 'fonts.conf');
    const text = await readFile(fonts, 'utf8');
    await writeFile(fonts, text.replaceAll('/tmp/fonts', join(folder, 'fonts')));
    await rename(partial, folder).catch(async (error) => {
      await rm(partial, { recursive: true, force: true });
      if (!existsSync(folder)) throw error;
    });
  }
  const libraries = [join(folder, 'al2023', 'lib'), process.env.LD_LIBRARY_PATH];
  return {
    executablePath: join(folder, 'chromium'),
    env: {
      ...process.env,
      LD_LIBRARY_PATH: libraries.filter(Boolean).join(delimiter),
      FONTCONFIG_PATH: join(folder, 'fonts'),
    },
  };
}

function onPath(name: string): string | undefined {
  return (process.env.PATH ?? '')
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find((path) => existsSync(path));
}

/** The machine's own browser, where no carried one runs. */
function machineBrowser(): LaunchOptions {
  const found = onPath('chromium') ?? onPath('chromium-browser');
  if (found) return { executablePath: found };
  return { channel: platform() === 'win32' ? 'msedge' : 'chrome' };
}

/** How to launch the browser for the tests: `TRUESWEEP_BROWSER`, else the carried one, else the machine's. */
export async function browserOptions(): Promise<LaunchOptions> {
  const args = platform() === 'linux' ? ['--no-sandbox'] : [];
  const chosen = process.env.TRUESWEEP_BROWSER;
  if (chosen) return { executablePath: chosen, args };
  if (platform() === 'linux' && arch() === 'x64') return { ...(await carriedBrowser()), args };
  return { ...machineBrowser(), args };
}
