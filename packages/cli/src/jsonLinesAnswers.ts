import { visibleText } from '@truesweep/wording';
import type { AnswerWriter } from './answerWriter.js';
import { scoredFile } from './scoredFile.js';
import type { Terminal } from './terminal.js';

/** Writes each answer as a line of JSON as soon as it is known. */
export function jsonLinesAnswers({ print }: Terminal): AnswerWriter {
  return {
    write: (answer) => print(`${visibleText(JSON.stringify(scoredFile(answer)))}\n`),
    end: () => {},
  };
}
