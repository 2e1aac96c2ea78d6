import { explainSupplyDrop } from '@truesweep/explain';
import { dropReadings, type supplyDrop } from '../calculators/supplyDrop.js';
import { type Written, written } from './written.js';

/** What the drops do. */
export function workings(values: Parameters<typeof supplyDrop>[0]): readonly Written[] {
  return written(() => explainSupplyDrop(dropReadings(values), values.dropCriterion));
}
