/** Where a command prints to. */
export interface Output {
  readonly env: NodeJS.ProcessEnv;
  /** Prints to the standard output. */
  readonly print: (text: string) => void;
  /** Prints to the error output. */
  readonly printError: (text: string) => void;
  /** Prints a sentence to the error output, with the program's name before it. */
  readonly tell: (sentence: string) => void;
  /** Calls it when the program is told to end; the second time the program ends at once. */
  readonly onEnd: (work: () => void) => void;
}
