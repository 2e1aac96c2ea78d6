import { visibleText } from '@truesweep/wording';
import type { PrintedData } from './printedData.js';

/** Data as a command prints it with `--json`. */
export function jsonText<Name extends keyof PrintedData>(
  _command: Name,
  data: PrintedData[Name],
): string {
  return `${visibleText(JSON.stringify(data, undefined, 2), '\n')}\n`;
}
