import type { Verdict } from '@truesweep/core';
import { visibleText } from '@truesweep/wording';
import { alignColumns } from './alignColumns.js';
import type { Terminal } from './terminal.js';
import type { Paragraph, Table, TextPart } from './textPart.js';
import { wrapText } from './wrapText.js';

type Looks = Pick<Terminal, 'width' | 'colour'>;

/** Before every row of a table. */
const indent = '  ';

/** Green, yellow, red and magenta, all bold (ECMA-48, 8.3.117, from memory). */
const colours: Readonly<Record<Verdict, string>> = {
  pass: '1;32',
  marginal: '1;33',
  fail: '1;31',
  inconclusive: '1;35',
};

/** What a command prints, as lines that fit the terminal. Nothing in them acts on it but the verdict's colour. */
export function layOut(parts: readonly TextPart[], looks: Looks): string {
  const lines = parts.map(visiblePart).flatMap((part) => {
    if (typeof part === 'string') return [part];
    return part.kind === 'table' ? tableLines(part, looks) : paragraphLines(part, looks);
  });
  return `${lines.join('\n')}\n`;
}

/** Names, headings and titles come from files: see {@link visibleText}. */
function visiblePart(part: TextPart): TextPart {
  if (typeof part === 'string') return visibleText(part);
  if (part.kind === 'paragraph') {
    return { ...part, first: visibleText(part.first), text: visibleText(part.text) };
  }
  const cells = (row: readonly string[]) => row.map((cell) => visibleText(cell));
  return { ...part, head: cells(part.head), rows: part.rows.map(cells) };
}

function paragraphLines({ text, first, verdict }: Paragraph, looks: Looks): readonly string[] {
  const [line = '', ...more] = wrapText(text, first, looks.width);
  if (!verdict || !looks.colour) return [line, ...more];
  const coloured = `\u001b[${colours[verdict]}m${first}\u001b[0m`;
  return [coloured + line.slice(first.length), ...more];
}

function tableLines({ head, rows, sides }: Table, looks: Looks): readonly string[] {
  const all = head.length > 0 ? [head, ...rows] : rows;
  const lines = alignColumns(all, sides).map((line) => indent + line);
  if (lines.every(({ length }) => length <= looks.width)) return lines;
  const [title = '', ...names] = head;
  return [
    ...(title === '' ? [] : [indent + title]),
    ...rows.flatMap(([name = '', ...cells]) =>
      wrapText(recordText(names, cells), `${indent}${indent}${name}: `, looks.width, 6),
    ),
  ];
}

/** The cells of a row, each behind its heading; a short one is not broken. */
function recordText(names: readonly string[], cells: readonly string[]): string {
  return cells
    .map((cell) => (cell.length < 20 ? cell.replaceAll(' ', '\u00a0') : cell))
    .map((cell, i) => (names[i] ? `${names[i]} ${cell}` : cell))
    .join(', ');
}
