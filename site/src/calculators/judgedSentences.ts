import {
  type ReadingsOfKind,
  readingAdviceSentences,
  readingReasonSentences,
  readingVerdictMeanings,
  verdictLabels,
} from '@truesweep/wording';

/** The verdict of single readings, why it is no pass, and what to do next. */
export function judgedSentences(judged: ReadingsOfKind): readonly string[] {
  const { verdict } = judged.judgement;
  return [
    `${verdictLabels[verdict]}. ${readingVerdictMeanings[verdict]}`,
    ...readingReasonSentences(judged),
    ...readingAdviceSentences(judged),
  ];
}
