import type { InputError } from '@truesweep/core';

/** A recording that a batch is to judge. */
export interface BatchInput {
  /** Its path as it was named, from the working directory. */
  readonly file: string;
  /** Path of the job that it is judged by; the batch's own when left out. */
  readonly job?: string;
  readonly sensor?: string;
  readonly date?: string;
  readonly note?: string;
  /** The line of the manifest that names it. */
  readonly line?: number;
  /** Why it can't even be looked at, such as a folder that may not be opened. */
  readonly refusal?: InputError;
}
