import { recheckSentence, verdictLabels } from '@truesweep/wording';
import { printTheseCautions } from './printCautions.js';
import { printUnjudged } from './printUnjudged.js';
import type { OpenedReport } from './reopenReport.js';
import { paragraph, type TextPart } from './textPart.js';

/** What became of a report's recordings, as lines of text. */
export function printRechecks(opened: OpenedReport): readonly TextPart[] {
  const { title, writtenAt, recordings, refused } = opened;
  return [
    paragraph(`${title} (${writtenAt})`),
    ...recordings.map(({ name, stated, again }) =>
      paragraph(
        recheckSentence(verdictLabels[stated], again && verdictLabels[again]),
        `  ${name}: `,
      ),
    ),
    ...refused.flatMap(printUnjudged),
    '',
    ...printTheseCautions(['electronic-throttle', 'snaps-shut']),
  ];
}
