import type { FileAnswer } from './judgedFile.js';
import type { ScoredFile } from './printedData.js';
import { unjudgedFile } from './unjudgedFile.js';

/** What became of a recording, as data. */
export function scoredFile(answer: FileAnswer): ScoredFile {
  if ('refusal' in answer) return unjudgedFile(answer);
  const { file, reading, score } = answer;
  return { file, reading, score };
}
