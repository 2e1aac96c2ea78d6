import { notJudgedSentence } from '@truesweep/wording';
import type { RefusedFile } from './judgedFile.js';
import { refusalOf } from './refusalOf.js';

/** What the error output says of recordings that could not be judged: where others were, which; else each with its reason. */
export function notJudgedText(refused: readonly RefusedFile[], count: number): string {
  const lines =
    refused.length < count
      ? [
          notJudgedSentence(
            refused.map(({ file }) => file),
            count,
          ),
        ]
      : refused.map(({ refusal }) => refusalOf(refusal));
  return lines.map((line) => `truesweep: ${line}\n`).join('');
}
