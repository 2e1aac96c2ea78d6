import { type AnyJob, type Job, readAnyJob, readJob } from '@truesweep/jobs';
import { loadAnyJob, loadJob } from '@truesweep/jobs/node';
import { standardInputName } from '@truesweep/wording';
import type { InputBounds } from './inputBounds.js';
import { inputPieces, standardInput } from './inputPieces.js';

/** All bytes of a file, or of the standard input for `-`. */
export async function readInput(path: string, bounds: InputBounds): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  for await (const piece of inputPieces(path, bounds)) pieces.push(Uint8Array.from(piece));
  return Buffer.concat(pieces);
}

/** The job of a file, or of the standard input for `-`. */
export async function readJobInput(path: string, bounds: InputBounds): Promise<Job> {
  if (path !== standardInput) return await loadJob(path);
  return readJob(new TextDecoder().decode(await readInput(path, bounds)), standardInputName);
}

/** The job of any kind of sensor of a file, or of the standard input for `-`. */
export async function readAnyJobInput(path: string, bounds: InputBounds): Promise<AnyJob> {
  if (path !== standardInput) return await loadAnyJob(path);
  return readAnyJob(new TextDecoder().decode(await readInput(path, bounds)), standardInputName);
}
