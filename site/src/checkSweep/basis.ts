import { InputError } from '@truesweep/core';
import type { Job } from '@truesweep/jobs';
import { mendEntriesSentence, waitsForSensorSentence } from '@truesweep/wording';
import { namesOf, readForm, type Texts } from '../forms/form.js';
import { jobForm, jobOf, stretchesOf } from './jobForm.js';
import type { GivenJob, ReadBy } from './protocol.js';

/** Files that were chosen together. */
export interface Chosen {
  readonly files: readonly File[];
  /** `demo`: none of the user's own; `job`: among them is what they are judged by; `report`: it holds its own job and recordings. */
  readonly kind: 'demo' | 'job' | 'report' | 'recordings';
}

/** What files are judged by, or why they can't be judged; `key` is equal for equal grounds, and only for them. */
export type Grounds =
  | { readonly kind: 'ready'; readonly given: GivenJob; readonly key: string }
  /** Nobody said yet that the entries are those of their own sensor. */
  | { readonly kind: 'waiting'; readonly why: string; readonly key: string }
  | { readonly kind: 'refused'; readonly why: string };

/**
 * What chosen files are judged by: a file among them, the job that is open, or the entries once someone said that they are theirs.
 *
 * @param isMine Whether the entries, as they stand, were said to be those of one's own sensor.
 * @param readBy How recordings are read, where the page was told.
 */
export function groundsOf(
  kind: Chosen['kind'] | undefined,
  job: Job | undefined,
  texts: Texts<(typeof jobForm)['entries']>,
  isMine: boolean,
  readBy: ReadBy = {},
): Grounds {
  if (kind !== undefined && kind !== 'recordings') return ready({ stretches: [], ...readBy });
  if (job) return ready({ job, stretches: [], ...readBy });
  const read = readForm(jobForm, texts);
  if ('refusals' in read) {
    const wrong = namesOf(jobForm).filter((name) => name in read.refusals);
    const why = mendEntriesSentence(wrong.map((name) => jobForm.labels[name]));
    return { kind: 'refused', why };
  }
  try {
    const stretches = stretchesOf(read.values);
    const entered = ready({ job: jobOf(read.values), stretches, ...readBy });
    if (isMine) return entered;
    return { kind: 'waiting', why: waitsForSensorSentence, key: entered.key };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { kind: 'refused', why: error.message };
  }
}

function ready(given: GivenJob): Extract<Grounds, { kind: 'ready' }> {
  return { kind: 'ready', given, key: JSON.stringify(given) };
}
