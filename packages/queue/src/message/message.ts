import type { JobRecording } from '@truesweep/jobs';

/** What the job says of how one recording is read. */
export type ReadAs = Pick<JobRecording, 'text' | 'sound' | 'stretches'>;

/** What stands in the queue for a recording: version 1. */
export interface Message {
  /** Version of these fields: 1. */
  readonly version: 1;
  /** The recording: where it lies, and what it must be. */
  readonly recording: {
    /** Which of a worker's storages has it. */
    readonly in: 'folder' | 'bucket';
    /** Its name there: relative, with slashes between parts. */
    readonly name: string;
    /** How many bytes it has: whole, 0 or more. */
    readonly bytes: number;
    /** SHA-256 of its bytes, 64 hexadecimal digits: a file that has another by now is refused. */
    readonly sha256: string;
    /** How the job has it read; left out where it says nothing. */
    readonly readAs?: ReadAs;
  };
  /** The job that it is judged by: SHA-256 of the text that the queue holds of it, 64 hexadecimal digits. */
  readonly definition: string;
  /** What it is filed as. */
  readonly file: string;
  /** Which sensor was recorded; the name in the job when left out. */
  readonly sensor?: string;
  /** When it was recorded: any text; not told when left out. */
  readonly date?: string;
  /** What else is to be kept with it; nothing when left out. */
  readonly note?: string;
}
