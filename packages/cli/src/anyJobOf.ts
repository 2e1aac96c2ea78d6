import type { AnyJob } from '@truesweep/jobs';
import { inFile } from './inFile.js';
import { jobBounds } from './inputBounds.js';
import { readAnyJobInput } from './readInput.js';
import type { Output } from './terminal.js';

/** The job of any kind of sensor of a file, which is named in what is refused. */
export async function anyJobOf(path: string, output: Output): Promise<AnyJob> {
  return await inFile(path, () => readAnyJobInput(path, jobBounds(output)));
}
