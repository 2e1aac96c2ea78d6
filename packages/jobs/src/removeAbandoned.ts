import { readdir, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

const abandonedName = /\.truesweep-[0-9a-f]{12}\.part$/;

/** No write that goes on is this long without a byte, ms. */
const longest = 600_000;

/**
 * Removes what writes that were killed left in a folder: files that are named like the given one and were last written to much
 * earlier, by the clock of the disk that they are on. Those that can't be removed stay.
 */
export async function removeAbandoned(written: string): Promise<void> {
  const folder = dirname(written);
  const { mtimeMs: now } = await stat(written);
  const names = await readdir(folder).catch(() => []);
  for (const name of names.filter((one) => abandonedName.test(one) && one !== basename(written))) {
    const path = join(folder, name);
    const { mtimeMs = now } = (await stat(path).catch(() => undefined)) ?? {};
    if (now - mtimeMs > longest) await rm(path, { force: true }).catch(() => {});
  }
}
