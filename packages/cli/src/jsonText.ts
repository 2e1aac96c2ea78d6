/** Data as a command prints it with `--json`. */
export function jsonText(data: unknown): string {
  return `${JSON.stringify(data, undefined, 2)}\n`;
}
