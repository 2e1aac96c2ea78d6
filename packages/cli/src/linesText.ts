/** Lines as a command prints them. */
export function linesText(lines: readonly string[]): string {
  return `${lines.join('\n')}\n`;
}
