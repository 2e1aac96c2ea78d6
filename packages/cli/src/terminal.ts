/** What the commands print to. */
export interface Terminal {
  /** Writes to the standard output. */
  readonly print: (text: string) => void;
  /** Columns that every line must fit. */
  readonly width: number;
  /** Whether the verdict is coloured; it is always in words as well. */
  readonly colour: boolean;
}

/** Where the command line writes to. */
export interface Output extends Terminal {
  /** Writes to the error output. */
  readonly printError: (text: string) => void;
}
