import { notJudgedSentence, refusalSentence } from '@truesweep/wording';
import { errorLine } from './errorLine.js';
import type { UnjudgedFile } from './printedData.js';

/** What the error output says of recordings that could not be judged: where others were, which; else each with its reason. */
export function notJudgedText(refused: readonly UnjudgedFile[], count: number): string {
  const lines =
    refused.length < count
      ? [
          notJudgedSentence(
            refused.map(({ file }) => file),
            count,
          ),
        ]
      : refused.map((one) => refusalSentence(one.refused));
  return lines.map(errorLine).join('');
}
