import type { ReadBy } from '../checkSweep/protocol.js';

/** How lines are read, with the column of the supply where a heading names one and nobody said otherwise. */
export function withSupply(read: ReadBy, headings: readonly string[]): ReadBy {
  if (read.text?.supplyColumn !== undefined) return read;
  const column = headings.findIndex((heading) => /\bsupply\b/i.test(heading));
  return column < 0 ? read : { ...read, text: { ...read.text, supplyColumn: column } };
}
