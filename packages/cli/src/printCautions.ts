import { cautions, scoreLabels } from '@truesweep/wording';
import { paragraph, type TextPart } from './textPart.js';

/** The usual cautions, as lines of text. */
export function printCautions(): readonly TextPart[] {
  return [
    `${scoreLabels.cautions}:`,
    ...Object.values(cautions).map((caution) => paragraph(caution, '- ')),
  ];
}
