import { notJudgedLabel, refusalSentence } from '@truesweep/wording';
import type { UnjudgedFile } from './printedData.js';
import { paragraph, type TextPart } from './textPart.js';

/** A recording that could not be judged, as it stands among those that were. */
export function printUnjudged({ file, refused }: UnjudgedFile): readonly TextPart[] {
  return [file, paragraph(refusalSentence(refused), `  ${notJudgedLabel}: `)];
}
