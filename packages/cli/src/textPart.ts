import type { Verdict } from '@truesweep/core';

/** A text that is broken between words, with `first` before its first line and as many spaces before the others. */
export interface Paragraph {
  readonly kind: 'paragraph';
  readonly first: string;
  readonly text: string;
  /** The verdict that stands in `first`, for its colour. */
  readonly verdict?: Verdict;
}

/** Rows under headings; where it doesn't fit a terminal's width each row is a paragraph. */
export interface Table {
  readonly kind: 'table';
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly sides: readonly ('left' | 'right')[];
}

/** A piece of what a command prints, before it is laid out: a line that stays as it is, a paragraph or a table. */
export type TextPart = string | Paragraph | Table;

export function paragraph(text: string, first = ''): Paragraph {
  return { kind: 'paragraph', first, text };
}

/** @param head Empty for a table without headings. */
export function table(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  sides: readonly ('left' | 'right')[],
): Table {
  return { kind: 'table', head, rows, sides };
}
