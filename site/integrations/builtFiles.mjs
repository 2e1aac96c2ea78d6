import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * Paths of all files of a build, sorted.
 *
 * @param {URL} dir
 */
export async function builtFiles(dir) {
  const files = await readdir(dir, { recursive: true, withFileTypes: true });
  return files
    .filter((file) => file.isFile())
    .map(({ parentPath, name }) => join(parentPath, name))
    .sort();
}

/**
 * Paths of a build's pages.
 *
 * @param {URL} dir
 */
export async function builtPages(dir) {
  return (await builtFiles(dir)).filter((path) => path.endsWith('.html'));
}

/**
 * A path below a folder, with slashes.
 *
 * @param {URL} dir
 * @param {string} path
 */
export function pathBelow(dir, path) {
  return path.slice(fileURLToPath(dir).length).replaceAll('\\', '/');
}
