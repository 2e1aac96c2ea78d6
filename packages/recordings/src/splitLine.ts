import type { Delimiter } from './delimitedOptions.js';

/** The fields of one line, without quotes and outer spaces; quoted fields may hold the delimiter, and a quote that is doubled (RFC 4180). */
export function splitLine(line: string, delimiter: Delimiter): readonly string[] {
  const text = delimiter === ' ' ? line.trim().replace(/ +/g, ' ') : line;
  // Nearly all lines have no quotes, and then every delimiter parts two fields.
  if (!text.includes('"')) return text.split(delimiter).map((field) => field.trim());
  const fields: string[] = [];
  for (let at = 0; ; ) {
    const [field, next] = fieldAt(text, at, delimiter);
    fields.push(field.trim());
    if (next > text.length) return fields;
    at = next;
  }
}

/** The field that begins at a place, and where the next one begins: beyond the text after the last. */
function fieldAt(text: string, start: number, delimiter: Delimiter): readonly [string, number] {
  let at = start;
  let field = '';
  if (text[at] === '"') {
    do {
      const close = endOf(text, '"', at + 1);
      // The second of two quotes stands for one.
      field += (field === '' && at === start ? '' : '"') + text.slice(at + 1, close);
      at = close + 1;
    } while (text[at] === '"');
  }
  const end = endOf(text, delimiter, Math.min(at, text.length));
  return [field + text.slice(at, end), end + 1];
}

/** Where a sign stands next, or the text ends. */
function endOf(text: string, sign: string, from: number): number {
  const found = text.indexOf(sign, from);
  return found < 0 ? text.length : found;
}
