import type { Dir, Dirent } from 'node:fs';
import { opendir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { InputError } from '@truesweep/core';
import { folderUnreadableSentence } from '@truesweep/wording';
import type { BatchInput } from './batchInput.js';

/** What is found below a folder, one at a time. */
export type Found = BatchInput & { readonly isFolder: boolean };

/**
 * Everything below a folder but what is hidden, folders before what is in them, links followed, in the order of the disk; no more than
 * the open folders is held.
 *
 * @param enters Asked of each folder whether it is gone into.
 */
export async function* filesBelow(
  folder: string,
  enters: (folder: string) => boolean = () => true,
  within: readonly string[] = [],
): AsyncGenerator<Found> {
  let opened: Dir;
  let self: string;
  try {
    const { dev, ino } = await stat(folder, { bigint: true });
    self = `${dev}:${ino}`;
    // A link may lead to a folder that it lies in.
    if (within.includes(self)) return;
    opened = await opendir(folder);
  } catch (error) {
    yield { file: folder, isFolder: true, refusal: refusalOf(folder, error) };
    return;
  }
  try {
    for await (const entry of opened) {
      if (entry.name.startsWith('.')) continue;
      const file = join(folder, entry.name);
      const isFolder = await leadsToFolder(entry, file);
      yield { file, isFolder };
      if (isFolder && enters(file)) yield* filesBelow(file, enters, [...within, self]);
    }
  } catch (error) {
    yield { file: folder, isFolder: true, refusal: refusalOf(folder, error) };
  }
}

async function leadsToFolder(entry: Dirent, file: string): Promise<boolean> {
  if (!entry.isSymbolicLink()) return entry.isDirectory();
  return (await stat(file).catch(() => undefined))?.isDirectory() ?? false;
}

function refusalOf(folder: string, error: unknown): InputError {
  const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error);
  return new InputError('unreadable-file', folder, folderUnreadableSentence(reason));
}
