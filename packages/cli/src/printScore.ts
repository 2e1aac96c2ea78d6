import { type Criteria, formatQuantity, type Score } from '@truesweep/core';
import type { DelimitedReading } from '@truesweep/recordings';
import {
  adviceSentences,
  causeLabels,
  causeMeanings,
  columnSentence,
  delimiterLabels,
  movementSentence,
  readingSentence,
  scoreLabels,
  supplyAssumedSentence,
  unitFromLabels,
  verdictLabels,
  verdictMeanings,
  visibilitySentence,
  visibleSetByLabels,
} from '@truesweep/wording';
import type { JudgedFile } from './judgedFile.js';
import { printChecks } from './printChecks.js';
import { printFindings } from './printFindings.js';
import { wrapText } from './wrapText.js';

/** The judgement of one recording as lines of text; `short` leaves out the evidence. */
export function printScore(judged: JudgedFile, { short = false } = {}): readonly string[] {
  const { file, reading, score, criteria } = judged;
  const { verdict, findings } = score;
  const lines = [
    file,
    ...wrapText(verdictMeanings[verdict], `  ${verdictLabels[verdict].toUpperCase()}: `),
    ...paragraph(scoreLabels.cause, causeSentences(score)),
    ...paragraph(scoreLabels.next, nextSteps(score, criteria)),
  ];
  if (short) return lines;
  return [
    ...lines,
    ...(findings.length > 0 ? ['', ...printFindings(findings)] : []),
    '',
    ...printChecks(score.checks),
    '',
    ...paragraph(scoreLabels.movement, [movement(score)]),
    ...paragraph(scoreLabels.couldShow, [visibility(score)]),
    ...paragraph(scoreLabels.file, [howRead(reading)]),
    ...(score.supplyAssumed ? paragraph(scoreLabels.supply, [supplyAssumedSentence]) : []),
  ];
}

function paragraph(label: string, sentences: readonly string[]): readonly string[] {
  return sentences.flatMap((sentence, i) =>
    wrapText(sentence, `  ${(i === 0 ? label : '').padEnd(12)}`),
  );
}

function causeSentences({ causes }: Score): readonly string[] {
  return causes.map(({ cause, weight }) => {
    const share = causes.length > 1 ? ` (${formatQuantity(weight, '%', { digits: 2 })})` : '';
    return `${causeLabels[cause]}${share}. ${causeMeanings[cause]}`;
  });
}

function nextSteps({ advice }: Score, criteria: Criteria): readonly string[] {
  const slowest = criteria.dropout / criteria.samplesInDropout;
  const numbers = {
    interval: formatQuantity(slowest, 's', { trim: true }),
    returns: String(criteria.returns),
    visible: formatQuantity(criteria.coarsestVisible, '%', { trim: true }),
  };
  return advice.map((one, i) => {
    const number = advice.length > 1 ? `${i + 1}. ` : '';
    return number + adviceSentences[one](numbers);
  });
}

function movement({ strokes, snaps }: Score): string {
  return movementSentence({
    openings: strokes.filter(({ direction }) => direction === 'opening').length,
    closings: strokes.filter(({ direction }) => direction === 'closing').length,
    snaps: snaps.length,
    rebounds: snaps.reduce((sum, { rebounds }) => sum + rebounds.length, 0),
  });
}

function visibility({ quality, checks }: Score): string {
  const ofSpan = checks.find(({ check }) => check === 'visible-departure')?.measured;
  return visibilitySentence({
    dropout: formatQuantity(quality.shortestDropout, 's', { digits: 2, trim: true }),
    departure: formatQuantity(quality.visible, 'V', { digits: 2 }),
    ...(ofSpan !== undefined && {
      departureOfSpan: formatQuantity(ofSpan, '%', { digits: 2 }),
    }),
    setBy: visibleSetByLabels[quality.visibleSetBy],
  });
}

function howRead({ columns, delimiter, rows }: DelimitedReading): string {
  const described = (column: DelimitedReading['columns']['time' | 'signal']) =>
    columnSentence({
      number: column.index + 1,
      name: column.name,
      unit: column.unit,
      unitFrom: unitFromLabels[column.unitFrom],
    });
  return readingSentence({
    time: described(columns.time),
    signal: described(columns.signal),
    rows: String(rows),
    delimiter: delimiterLabels[delimiter],
  });
}
