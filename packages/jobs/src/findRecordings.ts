import { listOf } from '@truesweep/core';
import { checkBytes, checkText, namedRules } from './checkInput.js';
import { checkRecording } from './checkRecording.js';
import { identifyRecording, type RecordingIdentity } from './identifyRecording.js';
import type { JobRecording } from './job.js';

/** A file that is at hand, such as one dropped on a page. */
export interface NamedFile {
  /** Its name without folders. */
  readonly name: string;
  /** All that it holds. */
  readonly bytes: Uint8Array;
}

/** A recording of a job, with its file where one was found. */
export interface FoundRecording {
  /** The recording as the job names it. */
  readonly recording: JobRecording;
  /** The file that it is; left out where none was found. */
  readonly file?: NamedFile;
  /** The file's size and hash; left out where none was found. */
  readonly identity?: RecordingIdentity;
}

/**
 * Finds a job's recordings among files: by hash, where the job tells one, whatever the file's name is; else by name.
 *
 * @param files Their names without folders, as a browser tells them.
 * @returns The recordings in the job's order; those without a file have none of the files' names.
 * @throws InputError `recording-changed` where the only file of a recording's name has another size or hash than the job tells.
 *
 * @example
 * const bytes = new TextEncoder().encode('abc');
 * const recordings = [{ file: 'recordings/port.csv', bytes: 3 }, { file: 'recordings/lost.csv' }];
 * const found = await findRecordings(recordings, [{ name: 'port.csv', bytes }]);
 * found.map(({ file }) => file?.name) // => ['port.csv', undefined]
 */
export async function findRecordings(
  recordings: readonly JobRecording[],
  files: readonly NamedFile[],
): Promise<readonly FoundRecording[]> {
  listOf(namedRules)(recordings, 'recordings');
  listOf({ name: checkText, bytes: checkBytes })(files, 'files');
  const known = await Promise.all(
    files.map(async (file) => ({ file, identity: await identifyRecording(file.bytes) })),
  );
  return recordings.map((recording) => {
    const named = known.filter(({ file }) => file.name === nameOf(recording.file));
    const found =
      known.find(({ identity }) => identity.sha256 === recording.sha256) ??
      named.find(({ identity }) => identity.bytes === recording.bytes) ??
      named[0];
    if (!found) return { recording };
    checkRecording(recording, found.identity);
    return { recording, ...found };
  });
}

/** A path's last part, with either slash between its parts. */
function nameOf(path: string): string {
  return path.split(/[/\\]/).at(-1) ?? path;
}
