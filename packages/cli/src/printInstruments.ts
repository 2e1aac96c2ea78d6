import { formatQuantity } from '@truesweep/core';
import { instrumentSentences, instrumentWords, intervalTakenSentence } from '@truesweep/wording';
import type { JobAdvice } from './adviseOnJob.js';
import { printTheseCautions } from './printCautions.js';
import { paragraph, type TextPart, table } from './textPart.js';

/** Which instruments show a worn spot, how to set one, and what a meter alone can do, as text. */
export function printInstruments(advice: JobAdvice): readonly TextPart[] {
  const { sought, shownBy, rows, assumed, setting, meterOnly, digits } =
    instrumentSentences(advice);
  const { own } = advice;
  const [head = [], ...ranked] = rows;
  return [
    advice.title,
    paragraph(shownBy, '  '),
    paragraph(sought, '  '),
    '',
    table(head, ranked, ['left', 'left', 'right', 'right', 'right', 'right']),
    paragraph(assumed, '  '),
    ...(own.isTold
      ? []
      : [
          paragraph(
            intervalTakenSentence(
              own.name,
              formatQuantity(own.interval, 's', { digits: 2, trim: true }),
            ),
            '  ',
          ),
        ]),
    '',
    `${instrumentWords.digits}:`,
    paragraph(digits, '  '),
    '',
    `${instrumentWords.setting}:`,
    paragraph(setting, '  '),
    '',
    `${instrumentWords.meterOnly}:`,
    ...meterOnly.map((sentence) => paragraph(sentence, '  ')),
    '',
    ...printTheseCautions(['unplugged', 'fingers']),
  ];
}
