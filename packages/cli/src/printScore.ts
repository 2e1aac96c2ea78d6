import {
  type ScoreSentences,
  scoreLabels,
  scoreSentences,
  supplyAssumedSentence,
  verdictLabels,
  verdictMeanings,
} from '@truesweep/wording';
import { howRead } from './howRead.js';
import type { JudgedFile } from './judgedFile.js';
import { printChecks } from './printChecks.js';
import { printFindings } from './printFindings.js';
import { wrapText } from './wrapText.js';

/** The judgement of one recording as lines of text; `short` leaves out the evidence. */
export function printScore(judged: JudgedFile, { short = false } = {}): readonly string[] {
  const { file, reading, score, criteria } = judged;
  const { verdict, findings } = score;
  const sentences = scoreSentences(score, criteria);
  const lines = [
    file,
    ...wrapText(verdictMeanings[verdict], `  ${verdictLabels[verdict].toUpperCase()}: `),
    ...paragraph(scoreLabels.cause, sentences.cause),
    ...paragraph(scoreLabels.next, sentences.next),
  ];
  if (short) return lines;
  return [
    ...lines,
    ...paragraph(scoreLabels.abrupt, sentences.abrupt),
    ...(findings.length > 0 ? ['', ...printFindings(findings), '', ...evidence(sentences)] : []),
    '',
    ...printChecks(score.checks),
    '',
    ...paragraph(scoreLabels.movement, [sentences.movement]),
    ...paragraph(scoreLabels.couldShow, sentences.couldShow),
    ...paragraph(scoreLabels.file, [howRead(reading)]),
    ...(score.supplyAssumed ? paragraph(scoreLabels.supply, [supplyAssumedSentence]) : []),
  ];
}

function paragraph(label: string, sentences: readonly string[]): readonly string[] {
  return sentences.flatMap((sentence, i) =>
    wrapText(sentence, `  ${(i === 0 ? label : '').padEnd(12)}`),
  );
}

/** Where departures came again, how to part track from connection, and the codes that they could set. */
function evidence({ places, tests, codes }: ScoreSentences): readonly string[] {
  return [
    ...paragraph(scoreLabels.places, places),
    ...paragraph(scoreLabels.tests, tests),
    ...paragraph(scoreLabels.codes, codes),
  ];
}
