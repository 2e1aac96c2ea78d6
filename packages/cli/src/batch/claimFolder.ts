import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { InputError } from '@truesweep/core';
import { folderInUseSentence, folderNotWrittenSentence } from '@truesweep/wording';

/**
 * Makes a folder where there is none, and keeps other batches out of it until what is returned is called. What a batch that was killed left is taken over.
 *
 * @throws InputError `cannot-write`, also where another batch writes to it.
 */
export function claimFolder(folder: string): () => void {
  const path = join(folder, 'batch.lock');
  const claim = JSON.stringify({ process: process.pid, host: hostname() });
  const write = () => writeFileSync(path, claim, { flag: 'wx' });
  try {
    mkdirSync(folder, { recursive: true });
    try {
      write();
    } catch (error) {
      if (reasonOf(error) !== 'EEXIST') throw error;
      refuseOther(folder, path);
      rmSync(path, { force: true });
      write();
    }
  } catch (error) {
    if (error instanceof InputError) throw error;
    throw new InputError('cannot-write', folder, folderNotWrittenSentence(reasonOf(error)));
  }
  return () => rmSync(path, { force: true });
}

/** Whoever claimed it may have ended without a word, which only its own machine can tell. */
function refuseOther(folder: string, path: string): void {
  let claim: { readonly process?: unknown; readonly host?: unknown };
  try {
    claim = JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    // Killed while it wrote this.
    return;
  }
  const { process: id, host } = claim;
  if (typeof id !== 'number' || (host === hostname() && !isRunning(id))) return;
  throw new InputError('cannot-write', folder, folderInUseSentence(id, String(host), path));
}

function isRunning(id: number): boolean {
  if (id === process.pid) return false;
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return reasonOf(error) === 'EPERM';
  }
}

function reasonOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : String(error);
}
