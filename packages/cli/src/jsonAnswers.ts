import type { AnswerWriter } from './answerWriter.js';
import { jsonText } from './jsonText.js';
import type { ScoredFile } from './printedData.js';
import { scoredFile } from './scoredFile.js';
import type { Terminal } from './terminal.js';

/** Writes answers as one list in JSON. */
export function jsonAnswers({ print }: Terminal): AnswerWriter {
  const data: ScoredFile[] = [];
  return {
    write: (answer) => data.push(scoredFile(answer)),
    end: () => print(jsonText('score', data)),
  };
}
