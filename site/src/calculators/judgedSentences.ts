import {
  type ReadingsOfKind,
  readingReasonSentences,
  readingVerdictMeanings,
  verdictLabels,
} from '@truesweep/wording';

/** Sentences of one kind of sensor by its codes: a page carries those of its own kind. */
export interface KindSentences {
  readonly advice: Readonly<Record<string, string>>;
  readonly unsaid: Readonly<Record<string, string>>;
}

/** The verdict of single readings, why it is no pass, and what to do next. */
export function judgedSentences(
  judged: ReadingsOfKind,
  { advice }: KindSentences,
): readonly string[] {
  const { verdict } = judged.judgement;
  return [
    `${verdictLabels[verdict]}. ${readingVerdictMeanings[verdict]}`,
    ...readingReasonSentences(judged),
    ...judged.judgement.advice.map((code) => advice[code] ?? code),
  ];
}
