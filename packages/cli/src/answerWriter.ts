import type { FileAnswer } from './judgedFile.js';

/** Writes what became of recordings in one form: each when it is known, then what closes them. */
export interface AnswerWriter {
  readonly write: (answer: FileAnswer) => void;
  readonly end: () => void;
}
