import {
  bounceSentences,
  judgedReadingWords,
  readingAdviceSentences,
  readingCautions,
  readingCheckRows,
  readingCodesSentences,
  readingReasonSentences,
  readingUnsaidSentences,
  readingVerdictMeanings,
  sensorKindLabels,
  stepWords,
  verdictLabels,
} from '@truesweep/wording';
import type { JudgedJob } from './judgedJob.js';
import { printTheseCautions } from './printCautions.js';
import { paragraph, type TextPart, table } from './textPart.js';

/** The judgement of single readings as text. */
export function printReadings({
  title,
  sensor,
  judged,
  pumpDowns,
  bounces,
}: JudgedJob): readonly TextPart[] {
  const { verdict } = judged.judgement;
  const [head = [], ...rows] = readingCheckRows(judged);
  return [
    title,
    `${sensorKindLabels[judged.kind]}: ${sensor}`,
    {
      ...paragraph(readingVerdictMeanings[verdict], `  ${verdictLabels[verdict].toUpperCase()}: `),
      verdict,
    },
    ...labelled(judgedReadingWords.why, readingReasonSentences(judged)),
    ...labelled(judgedReadingWords.next, readingAdviceSentences(judged)),
    ...labelled(judgedReadingWords.codes, readingCodesSentences(judged)),
    '',
    table(head, rows, ['left', 'right', 'right', 'left']),
    '',
    ...pumpDowns.flatMap(({ file, steps, leak }) => [
      ...labelled(file, [
        ...steps.map((step) => stepWords.held(step)),
        ...(leak === undefined ? [] : [stepWords.leaks(leak)]),
      ]),
      '',
    ]),
    ...bounces.flatMap(({ file, bounce }) => [...labelled(file, bounceSentences(bounce)), '']),
    ...labelled(judgedReadingWords.spreadLabel, [judgedReadingWords.spread]),
    ...labelled(judgedReadingWords.unsaid, readingUnsaidSentences(judged)),
    '',
    ...printTheseCautions(
      readingCautions(judged.kind).filter(
        (one) => one !== 'manual-first' && one !== 'starting-points',
      ),
    ),
  ];
}

function labelled(label: string, sentences: readonly string[]): readonly TextPart[] {
  return sentences.map((sentence, i) =>
    paragraph(sentence, i === 0 ? `  ${label}: ` : ' '.repeat(label.length + 4)),
  );
}
