/** Where a command prints to. */
export interface Output {
  readonly env: NodeJS.ProcessEnv;
  /** Prints to the standard output. */
  readonly print: (text: string) => void;
  /** Prints a line to the error output. */
  readonly tell: (sentence: string) => void;
  /** Calls it when the program is told to end; the second time the program ends at once. */
  readonly onEnd: (work: () => void) => void;
}
