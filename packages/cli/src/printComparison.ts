import {
  type EndChange,
  formatQuantity,
  type SpotChange,
  type SweepComparison,
} from '@truesweep/core';
import {
  cannotShowSentences,
  checkLabels,
  comparisonWords,
  endChangeSentence,
  findingLabels,
  missedByChanceSentence,
  spotOutcomeLabels,
  verdictLabels,
} from '@truesweep/wording';
import { printTheseCautions } from './printCautions.js';
import { paragraph, type TextPart, table } from './textPart.js';

/** A comparison of two sweeps as lines of text. */
export function printComparison(
  before: string,
  after: string,
  comparison: SweepComparison,
): readonly TextPart[] {
  const { verdict, spots, outsideSpots, closed, open } = comparison;
  const rows = [
    [comparisonWords.verdict, verdictLabels[verdict.before], verdictLabels[verdict.after]],
    [comparisonWords.outsideSpots, String(outsideSpots.before), String(outsideSpots.after)],
  ];
  return [
    table(['', before, after], rows, ['left', 'left', 'left']),
    '',
    ...(spots.length === 0 ? [`  ${comparisonWords.noSpots}`] : spots.map(spotLine)),
    '',
    ...endLine(checkLabels['closed-end'], closed),
    ...endLine(checkLabels['open-end'], open),
    '',
    ...printTheseCautions(['electronic-throttle', 'snaps-shut']),
  ];
}

function spotLine(spot: SpotChange): TextPart {
  const { outcome, kind, before, after, because, missedByChance } = spot;
  const travel = percent((after ?? before)!.travel);
  const depth = [before, after].map((state) => (state ? percent(state.depth) : '–')).join(' → ');
  const head = `${travel}: ${findingLabels[kind]} ${spotOutcomeLabels[outcome]} (${comparisonWords.depth} ${depth}).`;
  const more = [
    because === undefined ? '' : cannotShowSentences[because],
    missedByChance === undefined ? '' : missedByChanceSentence(percent(missedByChance)),
  ];
  return paragraph([head, ...more].filter(Boolean).join(' '), '  ');
}

function endLine(label: string, change: EndChange | undefined): readonly TextPart[] {
  if (!change) return [];
  const { before, after, significant, uncertainty } = change;
  const sentence = endChangeSentence({
    label,
    before: volts(before),
    after: volts(after),
    change: volts(change.change),
    uncertainty: volts(2 * uncertainty),
    significant,
  });
  return [paragraph(sentence, '  ')];
}

function volts(value: number): string {
  return formatQuantity(value, 'V', { trim: true });
}

function percent(fraction: number): string {
  return formatQuantity(fraction, '%', { digits: 2, trim: true });
}
