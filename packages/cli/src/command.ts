/** Writes to the standard output. */
export type Print = (text: string) => void;

/** Data as a command prints it with `--json`. */
export function jsonText(data: unknown): string {
  return `${JSON.stringify(data, undefined, 2)}\n`;
}

/** Lines as a command prints them. */
export function linesText(lines: readonly string[]): string {
  return `${lines.join('\n')}\n`;
}
