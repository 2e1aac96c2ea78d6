import { notJudgedSentence } from '@truesweep/wording';
import { errorLine } from './errorLine.js';
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
  return lines.map(errorLine).join('');
}
