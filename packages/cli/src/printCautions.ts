import { cautions, scoreLabels } from '@truesweep/wording';
import { wrapText } from './wrapText.js';

/** The usual cautions, as lines of text. */
export function printCautions(): readonly string[] {
  return [
    `${scoreLabels.cautions}:`,
    ...Object.values(cautions).flatMap((caution) => wrapText(caution, '- ')),
  ];
}
