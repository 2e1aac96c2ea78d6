import type { JudgeOptions } from '@truesweep/jobs/node';

/** A recording for a worker. */
export interface JudgeTask extends JudgeOptions {
  readonly file: string;
  /** The job's text, as `writeJob` writes it. */
  readonly job: string;
}

/** Asks of a worker, and what it answers. */
export type ToWorker =
  | { readonly kind: 'judge'; readonly task: JudgeTask }
  | { readonly kind: 'kept'; readonly isKept: boolean };
