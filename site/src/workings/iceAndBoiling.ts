import { iceAndBoiling } from '../calculators/iceAndBoiling.js';
import { checksOf } from './checks.js';
import { type Written, written } from './written.js';

/** How each bath's reading stands to its limits. */
export function workings(values: Parameters<typeof iceAndBoiling>[0]): readonly Written[] {
  const { judgement, readings } = iceAndBoiling(values);
  return written(...checksOf({ kind: 'thermistor', judgement, readings }));
}
