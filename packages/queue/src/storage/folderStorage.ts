import { randomBytes } from 'node:crypto';
import { constants, type Stats } from 'node:fs';
import { access, link, mkdir, open, readdir, realpath, rename, rm, stat } from 'node:fs/promises';
import { dirname, join, resolve, sep } from 'node:path';
import {
  folderFaultSentence,
  missingObjectSentence,
  objectTooLargeSentence,
} from '../queueWords.js';
import { isObjectName } from './objectName.js';
import type { Storage } from './storage.js';
import { StorageFault } from './storageFault.js';

/** Where objects are written before they have their name: on the same disk, and never among those that are whole. */
const partials = '.partial';
/** No write that goes on is this old, ms. */
const longest = 3_600_000;

/**
 * A folder as storage. An object is written to a file of its own, to the disk, and only then linked to its name: it is there whole or not at all, and of
 * several writers one makes it. What writers that were killed leave behind in `.partial` is removed an hour later by the next that begins.
 *
 * @param folder Its path, from the working directory. It must be there: a disk that is not mounted must not be taken for an empty one.
 *
 * @example
 * import { mkdtemp } from 'node:fs/promises';
 * import { tmpdir } from 'node:os';
 * import { join } from 'node:path';
 * const storage = folderStorage(await mkdtemp(join(tmpdir(), 'example-')));
 * await storage.write('ab/one.json', new TextEncoder().encode('{}')) // => true
 * await storage.write('ab/one.json', new TextEncoder().encode('[]')) // => false
 * new TextDecoder().decode(await storage.read('ab/one.json', 100)) // => '{}'
 */
export function folderStorage(folder: string): Storage {
  const root = resolve(folder);
  let cleaned: Promise<void> | undefined;

  const attempt = async <Result>(work: () => Promise<Result>): Promise<Result> => {
    try {
      return await work();
    } catch (error) {
      // A name that is none is a fault of the caller.
      if (error instanceof StorageFault || error instanceof TypeError) throw error;
      throw new StorageFault('unreachable', folderFaultSentence(root, reasonOf(error)));
    }
  };
  const placeOf = (name: string): string => {
    if (!isObjectName(name)) throw new TypeError(`${JSON.stringify(name)} names no object.`);
    return join(root, name);
  };
  const fileOf = async (name: string): Promise<{ path: string; there: Stats }> => {
    const path = placeOf(name);
    try {
      const [real, base] = [await realpath(path), await realpath(root)];
      if (!real.startsWith(base.endsWith(sep) ? base : base + sep)) throw missing(name);
      return { path: real, there: await stat(real) };
    } catch (error) {
      if (!isMissing(error)) throw error;
      // A folder that is gone itself may come back.
      await access(root, constants.R_OK | constants.X_OK);
      throw missing(name);
    }
  };
  const missing = (name: string) => new StorageFault('missing', missingObjectSentence(name, root));

  return {
    label: root,
    read: (name, most) =>
      attempt(async () => {
        const { path, there } = await fileOf(name);
        if (!there.isFile()) throw missing(name);
        const tooLarge = () => new StorageFault('too-large', objectTooLargeSentence(name, most));
        if (there.size > most) throw tooLarge();
        const file = await open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
        try {
          const bytes = await file.readFile();
          if (bytes.length > most) throw tooLarge();
          return bytes;
        } finally {
          await file.close();
        }
      }),
    write: (name, bytes) =>
      attempt(async () => {
        const path = placeOf(name);
        if (await isThere(path)) return false;
        await access(root);
        const partial = join(root, partials, randomBytes(12).toString('hex'));
        await mkdir(dirname(partial), { recursive: true });
        cleaned ??= removeAbandoned(dirname(partial));
        await cleaned;
        try {
          await writeWhole(partial, bytes);
          await mkdir(dirname(path), { recursive: true });
          const isWritten = await nameIt(partial, path);
          await syncFolder(dirname(path));
          return isWritten;
        } finally {
          await rm(partial, { force: true }).catch(() => {});
        }
      }),
    has: (name) =>
      attempt(async () => {
        if (await isThere(placeOf(name))) return true;
        await access(root);
        return false;
      }),
    remove: (name) => attempt(() => rm(placeOf(name), { force: true })),
    pathOf: (name) => attempt(async () => (await fileOf(name)).path),
  };
}

async function isThere(path: string): Promise<boolean> {
  try {
    await stat(path);
    return true;
  } catch (error) {
    if (isMissing(error)) return false;
    throw error;
  }
}

async function writeWhole(path: string, bytes: Uint8Array): Promise<void> {
  const file = await open(path, 'wx');
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Gives a whole file its name, unless another has it. */
async function nameIt(partial: string, path: string): Promise<boolean> {
  try {
    await link(partial, path);
    return true;
  } catch (error) {
    const reason = reasonOf(error);
    if (reason === 'EEXIST') return false;
    if (!['EPERM', 'ENOTSUP', 'ENOSYS', 'EOPNOTSUPP', 'EMLINK'].includes(reason)) throw error;
    // Many network shares know no second names: the later of two writers takes the name then, with a file that is as whole.
    await rename(partial, path);
    return true;
  }
}

/** Sees to it that a name outlasts a loss of power. Windows opens no folders. */
async function syncFolder(path: string): Promise<void> {
  if (process.platform === 'win32') return;
  const folder = await open(path);
  try {
    await folder.sync();
  } finally {
    await folder.close();
  }
}

async function removeAbandoned(folder: string): Promise<void> {
  for (const name of await readdir(folder)) {
    const path = join(folder, name);
    const { mtimeMs } = (await stat(path).catch(() => undefined)) ?? { mtimeMs: Date.now() };
    if (Date.now() - mtimeMs > longest) await rm(path, { force: true }).catch(() => {});
  }
}

function isMissing(error: unknown): boolean {
  return ['ENOENT', 'ENOTDIR'].includes(reasonOf(error));
}

function reasonOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : String(error);
}
