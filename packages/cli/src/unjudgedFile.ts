import type { RefusedFile } from './judgedFile.js';
import type { UnjudgedFile } from './printedData.js';

/** A recording that could not be judged, as data. */
export function unjudgedFile({ file, refusal }: RefusedFile): UnjudgedFile {
  const { code, path, place, message } = refusal;
  return { file, refused: { code, path, ...(place && { place }), sentence: message } };
}
