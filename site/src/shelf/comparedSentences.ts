import {
  compareSweeps,
  type EndChange,
  formatQuantity,
  InputError,
  type Score,
  type SpotChange,
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

/** What changed between two judgements of a sensor, in sentences; why they can't be compared where they can't. */
export function comparedSentences(before: Score, after: Score): readonly string[] {
  try {
    const { verdict, spots, closed, open } = compareSweeps(before, after);
    return [
      `${comparisonWords.verdict}: ${verdictLabels[verdict.before]}, then ${verdictLabels[verdict.after]}.`,
      ...(spots.length === 0 ? [comparisonWords.noSpots] : spots.map(spotSentence)),
      ...endSentences(checkLabels['closed-end'], closed),
      ...endSentences(checkLabels['open-end'], open),
    ];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return [error.message];
  }
}

function spotSentence({
  outcome,
  kind,
  before,
  after,
  because,
  missedByChance,
}: SpotChange): string {
  const travel = percent((after ?? before)?.travel ?? 0);
  const depth = [before, after]
    .map((state) => (state ? percent(state.depth) : '–'))
    .join(', then ');
  return [
    `${travel}: ${findingLabels[kind]} ${spotOutcomeLabels[outcome]} (${comparisonWords.depth} ${depth}).`,
    because === undefined ? '' : cannotShowSentences[because],
    missedByChance === undefined ? '' : missedByChanceSentence(percent(missedByChance)),
  ]
    .filter((part) => part !== '')
    .join(' ');
}

function endSentences(label: string, change: EndChange | undefined): readonly string[] {
  if (!change) return [];
  const { before, after, significant, uncertainty } = change;
  return [
    endChangeSentence({
      label,
      before: volts(before),
      after: volts(after),
      change: volts(change.change),
      uncertainty: volts(2 * uncertainty),
      significant,
    }),
  ];
}

function volts(value: number): string {
  return formatQuantity(value, 'V', { trim: true });
}

function percent(fraction: number): string {
  return formatQuantity(fraction, '%', { digits: 2, trim: true });
}
