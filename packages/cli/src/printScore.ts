import {
  howRead,
  type ScoreSentences,
  scoreLabels,
  scoreSentences,
  verdictLabels,
} from '@truesweep/wording';
import type { JudgedFile } from './judgedFile.js';
import { printChecks } from './printChecks.js';
import { printFindings } from './printFindings.js';
import { paragraph, type TextPart } from './textPart.js';

/** The judgement of one recording as text; `short` leaves out the evidence. */
export function printScore(
  { file, reading, score, criteria }: Pick<JudgedFile, 'file' | 'reading' | 'score' | 'criteria'>,
  { short = false } = {},
): readonly TextPart[] {
  const { verdict, findings } = score;
  const sentences = scoreSentences(score, criteria);
  const lines: readonly TextPart[] = [
    file,
    {
      ...paragraph(sentences.verdict, `  ${verdictLabels[verdict].toUpperCase()}: `),
      verdict,
    },
    ...labelled(scoreLabels.limits, sentences.loosened),
    ...labelled(scoreLabels.sure, sentences.sure),
    ...labelled(scoreLabels.cause, sentences.cause),
    ...labelled(scoreLabels.next, sentences.next),
  ];
  if (short) return lines;
  return [
    ...lines,
    ...labelled(scoreLabels.abrupt, sentences.abrupt),
    ...(findings.length > 0 ? ['', ...printFindings(findings), '', ...evidence(sentences)] : []),
    '',
    ...printChecks(score.checks),
    '',
    ...labelled(scoreLabels.movement, [sentences.movement]),
    ...labelled(scoreLabels.seen, sentences.seen),
    ...labelled(scoreLabels.couldShow, sentences.couldShow),
    ...labelled(scoreLabels.stamps, sentences.stamps),
    ...labelled(scoreLabels.file, [howRead(reading)]),
    ...labelled(scoreLabels.assumed, sentences.assumed),
  ];
}

function labelled(label: string, sentences: readonly string[]): readonly TextPart[] {
  return sentences.map((sentence, i) =>
    paragraph(sentence, `  ${(i === 0 ? label : '').padEnd(12)}`),
  );
}

/** Where departures came again, how to part track from connection, and the codes that they could set. */
function evidence({ places, tests, codes }: ScoreSentences): readonly TextPart[] {
  return [
    ...labelled(scoreLabels.places, places),
    ...labelled(scoreLabels.tests, tests),
    ...labelled(scoreLabels.codes, codes),
  ];
}
