/** A list of texts. */
export function list(items: readonly string[]): string {
  return items.map((item) => `- ${plain(item)}`).join('\n');
}

/** A table of texts, its head first. */
export function table(rows: readonly (readonly string[])[]): string {
  const [head = [], ...body] = rows.map((row) => row.map(plain));
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...body.map(line)].join('\n');
}

/** Text that Markdown leaves as it is: one line, no markup. */
export function plain(text: string): string {
  return text.replace(/[\r\n\t]+/g, ' ').replace(/[\\`*_[\]<>|#&]/g, '\\$&');
}

/** Lines that stay as they are: indented by four, which no text in them can end. */
export function block(lines: readonly string[]): string {
  return lines.map((line) => `    ${line.replace(/[\r\n]+/g, ' ')}`).join('\n');
}
