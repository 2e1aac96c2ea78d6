import { type Caution, cautions, moreCautionsSentence, scoreLabels } from '@truesweep/wording';
import { paragraph, type TextPart } from './textPart.js';

/** All the usual cautions, as lines of text. */
export function printCautions(): readonly TextPart[] {
  return listed(Object.keys(cautions) as Caution[]);
}

/** Those that concern what was just advised, and where the others stand. */
export function printTheseCautions(these: readonly Caution[]): readonly TextPart[] {
  return [...listed(these), paragraph(moreCautionsSentence)];
}

function listed(these: readonly Caution[]): readonly TextPart[] {
  return [`${scoreLabels.cautions}:`, ...these.map((one) => paragraph(cautions[one], '- '))];
}
