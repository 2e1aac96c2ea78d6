import type { Verdict } from '@truesweep/core';
import type { Message } from '../message/message.js';

/** What a judging process opens once. */
export interface JudgeSettings {
  /** Where recordings lie: places as the command names them. */
  readonly recordings: readonly string[];
  /** Where results are filed. */
  readonly results: string;
  /** Where the object store answers, and the region that requests are signed for. */
  readonly endpoint?: string | undefined;
  readonly region?: string | undefined;
  /** The largest recording that is read, bytes. */
  readonly largest: number;
}

/** A message with the text of its job. */
export interface JudgeTask {
  readonly id: string;
  readonly message: Message;
  readonly definition: string;
}

/**
 * What became of a message: filed with its verdict or as refused; known, because there is a result of its key; `passing`, so that another try is due; or `poison`, which no
 * other try would change.
 */
export type TaskOutcome =
  | { readonly kind: 'filed'; readonly outcome: Verdict | 'refused' }
  | { readonly kind: 'known' }
  | { readonly kind: 'passing' | 'poison'; readonly reason: string };

/** What a judging process is told. */
export type ToProcess =
  | { readonly kind: 'open'; readonly settings: JudgeSettings }
  | { readonly kind: 'judge'; readonly task: JudgeTask };
