/** Columns of a terminal that every line must fit. */
export const width = 80;

/** A text in lines that fit the terminal: `first` before the first line, as many spaces before the others. */
export function wrapText(text: string, first: string): readonly string[] {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(' ')) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = ' '.repeat(first.length);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line];
}
