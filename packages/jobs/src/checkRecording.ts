import { checkFields, InputError } from '@truesweep/core';
import { checkIdentity, namedRules } from './checkInput.js';
import type { RecordingIdentity } from './identifyRecording.js';
import type { JobRecording } from './job.js';

/**
 * Refuses a file that is not the recording that a job names, where the job says its size or hash.
 *
 * @throws InputError `recording-changed`, with the file's name as its path.
 *
 * @example
 * checkRecording({ file: 'port.csv', bytes: 3 }, { bytes: 3, sha256: '' }) // => undefined
 */
export function checkRecording(
  recording: Pick<JobRecording, 'file' | 'bytes' | 'sha256'>,
  found: RecordingIdentity,
): void {
  checkFields(recording, 'recording', namedRules);
  checkIdentity(found, 'found');
  const { file, bytes, sha256 } = recording;
  const isOther =
    (bytes !== undefined && bytes !== found.bytes) ||
    (sha256 !== undefined && sha256 !== found.sha256);
  if (!isOther) return;
  const wanted =
    sha256 === undefined ? `${bytes} bytes` : `${bytes ?? '?'} bytes, SHA-256 ${start(sha256)}`;
  throw new InputError(
    'recording-changed',
    file,
    `The file is another one than the job names (${found.bytes} bytes, SHA-256 ${start(found.sha256)}; the job says ${wanted}). Find the recording as it was, or take bytes and sha256 out of the job to judge this one.`,
  );
}

function start(sha256: string): string {
  return `${sha256.slice(0, 8)}…`;
}
