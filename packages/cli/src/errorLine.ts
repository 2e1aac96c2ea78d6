import { visibleText } from '@truesweep/wording';

/** A sentence as a line of the error output. */
export function errorLine(sentence: string): string {
  return `truesweep: ${visibleText(sentence)}\n`;
}
