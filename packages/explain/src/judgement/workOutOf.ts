import { whole } from '../whole.js';
import type { Working } from '../working.js';
import { type Outcome, type Sheet, workOut } from '../workOut.js';

/** Works out something of a result that another package made, and refuses one that lacks a part. */
export function workOutOf(
  result: unknown,
  path: string,
  title: () => string,
  write: (sheet: Sheet) => Outcome,
): Working {
  return whole(result, path, () => workOut(title(), write));
}
