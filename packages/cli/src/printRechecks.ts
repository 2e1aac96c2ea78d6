import { recheckSentence, verdictLabels } from '@truesweep/wording';
import type { OpenedReport } from './reopenReport.js';
import { wrapText } from './wrapText.js';

/** What became of a report's recordings, as lines of text. */
export function printRechecks({ title, writtenAt, recordings }: OpenedReport): readonly string[] {
  return [
    ...wrapText(`${title} (${writtenAt})`, ''),
    ...recordings.flatMap(({ name, stated, again }) =>
      wrapText(
        recheckSentence(verdictLabels[stated], again && verdictLabels[again]),
        `  ${name}: `,
      ),
    ),
  ];
}
