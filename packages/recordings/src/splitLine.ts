import Papa from 'papaparse';
import type { Delimiter } from './delimitedOptions.js';

/** The fields of one line, without quotes and outer spaces; quoted fields may hold the delimiter. */
export function splitLine(line: string, delimiter: Delimiter): readonly string[] {
  const text = delimiter === ' ' ? line.trim().replace(/ +/g, ' ') : line;
  // Nearly all lines have no quotes, and then every delimiter parts two fields.
  if (!text.includes('"')) return text.split(delimiter).map((field) => field.trim());
  const { data } = Papa.parse<string[]>(text, { delimiter, newline: '\n', quoteChar: '"' });
  return (data[0] ?? ['']).map((field) => field.trim());
}
