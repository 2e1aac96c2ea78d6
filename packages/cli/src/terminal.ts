/** What the commands print to. */
export interface Terminal {
  /** Writes to the standard output. */
  readonly print: (text: string) => void;
  /** Columns that every line must fit. */
  readonly width: number;
  /** Whether the verdict is coloured; it is always in words as well. */
  readonly colour: boolean;
}

/** Somebody who is asked. */
export interface Questions {
  /** The answer; undefined where no more come. */
  readonly ask: (question: string) => Promise<string | undefined>;
  /** Says that nothing more is asked. */
  readonly end: () => void;
}

/** Where the command line writes to. */
export interface Output extends Terminal {
  /** Writes to the error output. */
  readonly printError: (text: string) => void;
  /** Begins to ask somebody; left out where nobody can answer. */
  readonly questions?: () => Questions;
}
