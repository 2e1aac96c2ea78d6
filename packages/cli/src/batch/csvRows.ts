import { InputError } from '@truesweep/core';
import { openQuoteSentence } from '@truesweep/wording';

/** A row of comma-separated values, with the line that it begins in. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

/** No row of a manifest is longer, characters. */
const longest = 2 ** 20;

/**
 * Rows of a text of comma-separated values (RFC 4180), or parted by semicolons or tabs where the first line has more of these; rows without any text are left out.
 *
 * @param name Of the file, for refusals.
 * @throws InputError `endless-line` for a quotation mark that is not closed.
 */
export async function* csvRows(lines: AsyncIterable<string>, name: string): AsyncGenerator<CsvRow> {
  let line = 0;
  let begun = 0;
  let delimiter: string | undefined;
  let text = '';
  for await (const more of lines) {
    line += 1;
    delimiter ??= delimiterOf(more);
    if (text === '') begun = line;
    text = text === '' ? more : `${text}\n${more}`;
    const cells = cellsOf(text, delimiter);
    if (!cells) {
      if (text.length > longest) refuse(name, begun);
      continue;
    }
    text = '';
    if (cells.some((cell) => cell !== '')) yield { line: begun, cells };
  }
  if (text !== '') refuse(name, begun);
}

function refuse(name: string, line: number): never {
  throw new InputError('endless-line', name, openQuoteSentence, { line, column: 1 });
}

function delimiterOf(line: string): string {
  const counts = [',', ';', '\t'].map((sign) => [sign, line.split(sign).length] as const);
  return counts.reduce((most, one) => (one[1] > most[1] ? one : most))[0];
}

/** The fields of a row; undefined where a quotation mark is open at its end. */
function cellsOf(row: string, delimiter: string): readonly string[] | undefined {
  const cells: string[] = [];
  for (let at = 0; ; ) {
    if (row[at] === '"') {
      let cell = '';
      let from = at + 1;
      for (;;) {
        const end = row.indexOf('"', from);
        if (end < 0) return undefined;
        cell += row.slice(from, end);
        at = end + 1;
        if (row[at] !== '"') break;
        cell += '"';
        from = at + 1;
      }
      const next = row.indexOf(delimiter, at);
      cells.push((cell + row.slice(at, next < 0 ? undefined : next).trim()).trim());
      if (next < 0) return cells;
      at = next + 1;
    } else {
      const next = row.indexOf(delimiter, at);
      cells.push(row.slice(at, next < 0 ? undefined : next).trim());
      if (next < 0) return cells;
      at = next + 1;
    }
  }
}
