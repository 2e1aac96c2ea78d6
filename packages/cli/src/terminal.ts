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

/** A terminal on which somebody watches: text that is drawn over the text before. */
export interface Screen {
  /** Whether it has keys: none where the standard input is no terminal and the system gives no other. */
  readonly hasKeys: boolean;
  /** How many lines it has room for. */
  readonly rows: () => number;
  /** Draws these lines in the place of those drawn before. */
  readonly draw: (lines: string) => void;
  /** Leaves what was drawn last, and gives keys and cursor back. */
  readonly end: () => void;
}

/** Where the command line writes to. */
export interface Output extends Terminal {
  /** Writes to the error output. */
  readonly printError: (text: string) => void;
  /** Begins to ask somebody; left out where nobody can answer. */
  readonly questions?: () => Questions;
  /** Begins to draw for somebody who watches, whose keys are told by their names, Ctrl-C as `stop`; left out where nobody does. */
  readonly screen?: (onKey: (key: string) => void) => Screen;
  /** Tells when somebody wants the program to end, until what is returned is called; left out where it ends at once. */
  readonly onInterrupt?: (listener: () => void) => () => void;
}
