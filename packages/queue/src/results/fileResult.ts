import type { RecordingResult } from '@truesweep/jobs/node';
import type { Storage } from '../storage/storage.js';

/**
 * Where the result of a key is filed: 256 folders, by the key's first two digits.
 *
 * @param key 64 hexadecimal digits.
 *
 * @example
 * resultName('ab'.repeat(32)).slice(0, 15) // => 'results/ab/abab'
 */
export function resultName(key: string): string {
  return `results/${key.slice(0, 2)}/${key}.json`;
}

/**
 * Where a refusal is filed that is none of the recording's bytes, and so has no key: by the message's id.
 *
 * @param id 64 hexadecimal digits.
 *
 * @example
 * refusalName('cd'.repeat(32)).slice(0, 15) // => 'refused/cd/cdcd'
 */
export function refusalName(id: string): string {
  return `refused/${id.slice(0, 2)}/${id}.json`;
}

/**
 * Files a result where there is none of its key yet: once, whoever else files the same. A refusal that was filed of the message before goes, so that of
 * each message there is one result.
 *
 * @param sink Where results are filed.
 * @param id The message's id, 64 hexadecimal digits.
 * @returns Whether it was written; where it was not, there is one of its key.
 * @throws StorageFault where it can't be written; then there is no half of it.
 *
 * @example
 * import { mkdtemp } from 'node:fs/promises';
 * import { tmpdir } from 'node:os';
 * import { join } from 'node:path';
 * import { judgeOne, loadJob } from '@truesweep/jobs/node';
 * const sink = folderStorage(await mkdtemp(join(tmpdir(), 'example-')));
 * const job = await loadJob('examples/outboard-sensor.job.json');
 * const worn = await judgeOne('examples/recordings/worn.csv', job);
 * await fileResult(sink, worn, '0'.repeat(64)) // => true
 * await fileResult(sink, worn, '0'.repeat(64)) // => false
 */
export async function fileResult(
  sink: Storage,
  result: RecordingResult,
  id: string,
): Promise<boolean> {
  const name = result.key === undefined ? refusalName(id) : resultName(result.key);
  const isWritten = await sink.write(name, Buffer.from(`${JSON.stringify(result)}\n`));
  if (result.key !== undefined) await sink.remove(refusalName(id));
  return isWritten;
}
