import { type Finding, formatQuantity, type Missing } from '@truesweep/core';
import {
  findingLine,
  hintSentence,
  liveWords,
  missingSentence,
  rateSentence,
  runningSentence,
} from '@truesweep/wording';
import { plotSweep } from '../plotSweep.js';
import { paragraph, type TextPart, table } from '../textPart.js';
import type { LiveState } from './liveState.js';

/** So many findings are shown, the latest. */
const shown = 4;

/** What stands on the screen while a recording runs. */
export function liveLines(state: LiveState, width: number): readonly TextPart[] {
  const { latest, coverage, missing, hints, findings, found, test } = state;
  const inSight = latest ? findings.filter((one) => one.end >= latest.time[0]!) : [];
  return [
    paragraph(headLine(state)),
    '',
    ...(latest ? plotSweep(latest, inSight as readonly Finding[], width).slice(1) : []),
    ...(coverage ? ['', ...coverageLines(coverage)] : []),
    '',
    `${liveWords.findings}: ${found}`,
    ...findings.slice(-shown).map((one) => `  ${findingLine(one)}`),
    ...hints.map((hint) => paragraph(hintSentence(hint), '! ')),
    ...(test ? [paragraph(liveWords.testRuns[test], '» ')] : []),
    ...(missing ? [paragraph(askedFor(missing))] : []),
    '',
    paragraph(liveWords.keys),
  ];
}

/** What is asked for next, with the keys that mark it. */
export function askedFor(missing: readonly Missing[]): string {
  return missing.length === 0 ? liveWords.enough : missingSentence(missing);
}

/** Where the recording comes from and how much there is. */
export function headLine({ source, rate, isLost, samples, seconds, reading }: LiveState): string {
  const from = source === '-' ? liveWords.standardInput : source;
  if (rate?.isTried) return rateSentence(from, rate.baud);
  return runningSentence({
    source: from,
    isLost,
    ...(rate && { baud: rate.baud }),
    samples,
    seconds: formatQuantity(seconds, 's'),
    damagedLines: reading.damagedLines,
    gaps: reading.gapCount,
    isChecked: reading.isChecked,
  });
}

function coverageLines({
  opening,
  closing,
}: NonNullable<LiveState['coverage']>): readonly TextPart[] {
  const row = (name: string, looks: readonly number[]) => [name, ...looks.map(String)];
  const tenths = opening.map((_, tenth) => formatQuantity((tenth + 1) / 10, '%', { trim: true }));
  return [
    table(
      [liveWords.passesTo, ...tenths],
      [row(liveWords.opening, opening), row(liveWords.closing, closing)],
      ['left', ...opening.map(() => 'right' as const)],
    ),
  ];
}
