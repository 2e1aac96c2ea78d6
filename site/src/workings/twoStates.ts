import { twoStates } from '../calculators/twoStates.js';
import { checksOf } from './checks.js';
import { type Written, written } from './written.js';

/** How each state's reading stands to its limits. */
export function workings(values: Parameters<typeof twoStates>[0]): readonly Written[] {
  const { judgement, readings } = twoStates(values);
  return written(...checksOf({ kind: 'two-state', judgement, readings }));
}
