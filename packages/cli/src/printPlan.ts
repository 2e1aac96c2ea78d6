import { formatQuantity } from '@truesweep/core';
import {
  connectionRows,
  giveRatingsSentence,
  limiterAdviceSentences,
  planWords,
} from '@truesweep/wording';
import type { HookUpPlan } from './planHookUp.js';
import { printCautions } from './printCautions.js';
import { paragraph, type TextPart, table } from './textPart.js';

/** A plan as lines of text. */
export function printPlan({
  title,
  limiter,
  choice,
  connections,
}: HookUpPlan): readonly TextPart[] {
  const [head = [], ...rows] = connectionRows(connections);
  return [
    title,
    ...limiterAdviceSentences(choice).map((sentence) => paragraph(sentence, '  ')),
    ...('notGiven' in choice && choice.notGiven.length > 0
      ? [paragraph(giveRatingsSentence(choice.notGiven), '  ')]
      : []),
    '',
    paragraph(planWords.table(formatQuantity(limiter, 'Ω', { trim: true }))),
    table(head, rows, ['left', 'right', 'right', 'left', 'left']),
    '',
    ...printCautions(),
  ];
}
