import { open } from 'node:fs/promises';
import { InputError } from '@truesweep/core';
import { lineEntry, noResults, type ReadEntry, shelfEntries, shelfOf } from './readRecords.js';

/** No line of results is longer, bytes; nor is a shelf. */
const mostBytes = 2 ** 28;

/**
 * What stands in a file of results, one after the other, so that a file of any size is read in little memory: of a batch or a history line by line, of a shelf
 * whole.
 *
 * @param path Of the file, from the working directory.
 * @throws InputError `missing-file`, `unreadable-file`, `not-json` where it is no file of results, `newer-version`, `file-too-large` for a shelf of more than 256 MB.
 *
 * @example
 * let code;
 * try {
 *   for await (const entry of recordsInFile('examples/recordings/sound.csv')) console.log(entry);
 * } catch (error) {
 *   code = error.code;
 * }
 * code // => 'not-json'
 */
export async function* recordsInFile(path: string): AsyncGenerator<ReadEntry> {
  let file: Awaited<ReturnType<typeof open>>;
  try {
    file = await open(path);
  } catch (error) {
    const isMissing = (error as NodeJS.ErrnoException).code === 'ENOENT';
    throw isMissing
      ? new InputError('missing-file', path, `There is no file ${path}.`)
      : new InputError('unreadable-file', path, `${path} can't be read.`);
  }
  try {
    const { size } = await file.stat();
    let line = 0;
    let isFirst = true;
    for await (const text of file.readLines({ encoding: 'utf8' })) {
      line++;
      if (text.trim() === '') continue;
      if (isFirst && !isWhole(text)) {
        yield* wholeEntries(path, size);
        return;
      }
      yield lineEntry(text, line, isFirst ? path : undefined);
      isFirst = false;
    }
    if (isFirst) throw noResults(path);
  } finally {
    await file.close();
  }
}

function isWhole(text: string): boolean {
  try {
    return !('sensors' in JSON.parse(text.replace(/^\ufeff/, '')));
  } catch {
    return false;
  }
}

async function* wholeEntries(path: string, size: number): AsyncGenerator<ReadEntry> {
  if (size > mostBytes)
    throw new InputError(
      'file-too-large',
      path,
      `${path} is larger than any shelf: more than 256 MB.`,
    );
  const file = await open(path);
  const text = await file.readFile('utf8').finally(() => file.close());
  const shelf = shelfOf(text, path);
  if (!shelf) throw noResults(path);
  yield* shelfEntries(shelf.sensors);
}
