import { type Finding, formatQuantity, type Missing, type Score } from '@truesweep/core';
import {
  findingLine,
  hintSentence,
  liveWords,
  missingSentence,
  rateSentence,
  runningSentence,
} from '@truesweep/wording';
import { layOut } from '../layOut.js';
import { plotSweep } from '../plotSweep.js';
import type { Terminal } from '../terminal.js';
import { paragraph, type TextPart, table } from '../textPart.js';
import type { LiveState } from './liveState.js';

/** So many findings are shown, the latest. */
const shown = 4;
/** Lines of a drawing beside those of the curve itself: its title, marks and ends. */
const aroundCurve = 6;
const [lowest, highest] = [3, 14];

/**
 * What stands on the screen while a recording runs. The drawing takes what room the words leave.
 *
 * @param rows How many lines the screen has.
 * @param hasKeys Whether tests can be marked by keys.
 */
export function liveLines(
  state: LiveState,
  looks: Pick<Terminal, 'width' | 'colour'>,
  rows: number,
  hasKeys: boolean,
): string {
  const { latest, findings } = state;
  const inSight = latest ? findings.filter((one) => one.end >= latest.time[0]!) : [];
  const head = layOut([paragraph(headLine(state))], looks);
  const words = layOut(wordsBelow(state, inSight, hasKeys), looks);
  if (!latest) return head + words;
  const room = rows - lineCount(head) - lineCount(words) - aroundCurve;
  const height = Math.min(highest, Math.max(lowest, room));
  return (
    head +
    layOut(
      plotSweep(latest, inSight as readonly Finding[], looks.width, { height, range: state.range }),
      looks,
    ) +
    words
  );
}

function lineCount(text: string): number {
  return text.split('\n').length - 1;
}

function wordsBelow(
  state: LiveState,
  inSight: LiveState['findings'],
  hasKeys: boolean,
): readonly TextPart[] {
  const { soFar, hints, found, test } = state;
  const first = Math.max(0, inSight.length - shown);
  return [
    ...(soFar ? coverageLines(soFar.score) : []),
    `${liveWords.findings}: ${found}`,
    ...inSight.slice(first).map((one, i) => `  ${first + i + 1}  ${findingLine(one)}`),
    ...hints.map((hint) => paragraph(hintSentence(hint), '! ')),
    ...(test ? [paragraph(liveWords.testRuns[test], '» ')] : []),
    ...(soFar ? [paragraph(askedFor(soFar.missing, hasKeys))] : []),
    paragraph(hasKeys ? liveWords.keys : liveWords.noKeys),
  ];
}

/** What is asked for next. */
export function askedFor(missing: readonly Missing[], withKeys: boolean): string {
  return missing.length === 0 ? liveWords.enough : missingSentence(missing, withKeys);
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

function coverageLines({ coverage: { opening, closing } }: Score): readonly TextPart[] {
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
