import type { FileAnswer } from './judgedFile.js';
import type { ScoredFile } from './printedData.js';

/** What became of a recording, as data. */
export function scoredFile(answer: FileAnswer): ScoredFile {
  if ('refusal' in answer) {
    const { code, path, place, message } = answer.refusal;
    return {
      file: answer.file,
      refused: { code, path, ...(place && { place }), sentence: message },
    };
  }
  const { file, reading, score } = answer;
  return { file, reading, score };
}
