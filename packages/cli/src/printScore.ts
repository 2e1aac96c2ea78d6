import { type Criteria, formatQuantity, type Score, troubleCodes } from '@truesweep/core';
import type { DelimitedReading } from '@truesweep/recordings';
import {
  adviceSentences,
  blindSentence,
  causeLabels,
  causeMeanings,
  columnSentence,
  delimiterLabels,
  morePassesSentence,
  movementSentence,
  narrowestSpotSentence,
  readingSentence,
  scoreLabels,
  spotSentence,
  supplyAssumedSentence,
  testsNotDoneSentence,
  troubleCodesSentence,
  troubleMeanings,
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

/** So many places are enough to show where the trouble lies. */
const mostPlaces = 3;

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
    ...(findings.length > 0 ? ['', ...printFindings(findings), '', ...evidence(score)] : []),
    '',
    ...printChecks(score.checks),
    '',
    ...paragraph(scoreLabels.movement, [movement(score)]),
    ...paragraph(scoreLabels.couldShow, visibility(score)),
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

function visibility({ quality, checks, couldShow }: Score): readonly string[] {
  const ofSpan = checks.find(({ check }) => check === 'visible-departure')?.measured;
  const { blind, narrowestSpot } = couldShow;
  const sentence = visibilitySentence({
    dropout: formatQuantity(quality.shortestDropout, 's', { digits: 2, trim: true }),
    departure: formatQuantity(quality.visible, 'V', { digits: 2 }),
    ...(ofSpan !== undefined && {
      departureOfSpan: formatQuantity(ofSpan, '%', { digits: 2 }),
    }),
    setBy: visibleSetByLabels[quality.visibleSetBy],
  });
  return [
    sentence,
    ...(narrowestSpot === undefined ? [] : [narrowestSpotSentence(percent(narrowestSpot))]),
    ...blind.map(([from, to]) => blindSentence(percent(from), percent(to))),
  ];
}

function percent(fraction: number): string {
  return formatQuantity(fraction, '%', { digits: 2, trim: true });
}

/** Where departures came again, how to part track from connection, and the codes that they could set. */
function evidence(score: Score): readonly string[] {
  const { spots, morePasses, testsNotDone, causes } = score;
  const again = spots.filter(({ seen }) => seen > 1).slice(0, mostPlaces);
  const inQuestion = causes.some(({ cause }) => cause === 'track' || cause === 'connection');
  const codes = troubleCodes(score).map(({ code, kind }) => `${code} (${troubleMeanings[kind]})`);
  return [
    ...paragraph(
      scoreLabels.places,
      again.map(({ travel, seen, passes }) =>
        spotSentence({ travel: percent(travel), seen: String(seen), passes: String(passes) }),
      ),
    ),
    ...paragraph(scoreLabels.tests, [
      ...(morePasses ? [morePassesSentence(String(morePasses))] : []),
      ...(inQuestion && testsNotDone.length > 0 ? [testsNotDoneSentence(testsNotDone)] : []),
    ]),
    ...paragraph(scoreLabels.codes, codes.length > 0 ? [troubleCodesSentence(codes)] : []),
  ];
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
