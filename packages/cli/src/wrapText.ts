/**
 * A text in lines of a width: `first` before the first line, spaces before the others, as many as `first` is long unless said otherwise. A
 * word that is longer than a line is left whole.
 */
export function wrapText(
  text: string,
  first: string,
  width: number,
  indent = first.length,
): readonly string[] {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(' ')) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = ' '.repeat(indent);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line];
}
