import { writeJob } from '@truesweep/jobs';
import { localTime } from '../checkSweep/localTime.js';
import { type KeptRecording, type Piece, readRecording } from './recordingStore.js';
import { waveHeader } from './waveHeader.js';

/** A recording as files: its job, which says how it is read and what was done when, and the recording itself. */
export type RecordedFiles = readonly [job: File, recording: File];

/** A kept recording as files; undefined where it is not there. */
export async function keptFiles(id: string): Promise<RecordedFiles | undefined> {
  const found = await readRecording(id);
  return found && recordedFiles(found.recording, found.pieces);
}

/** A recording as files: text, or a sound file of floating-point samples. */
export function recordedFiles(
  { startedAt, job, stretches, read, rate }: KeptRecording,
  pieces: readonly Piece[],
): RecordedFiles {
  const name = `sweep-${localTime(new Date(startedAt)).replace(/[ :]/g, '-')}`;
  const sounds = pieces.filter((piece) => typeof piece !== 'string');
  const samples = sounds.reduce((sum, { length }) => sum + length, 0);
  const recording =
    rate === undefined
      ? new File([...pieces], `${name}.csv`, { type: 'text/csv' })
      : new File([waveHeader(rate, samples), ...sounds], `${name}.wav`, { type: 'audio/wav' });
  const written = writeJob({
    ...job,
    recordings: [{ file: recording.name, ...(stretches.length > 0 && { stretches }), ...read }],
  });
  return [new File([written], `${name}.job.json`, { type: 'application/json' }), recording];
}
