import { explainCoil } from '@truesweep/explain';
import { coil, fedCoil } from '../calculators/coil.js';
import { checksOf } from './checks.js';
import { type Written, written } from './written.js';

/** How the resistance stands to its limits, and what flows in the coil. */
export function workings(values: Parameters<typeof coil>[0]): readonly Written[] {
  const { judgement, readings } = coil(values);
  const fed = fedCoil(values, judgement.checks[0]?.measured);
  return written(
    ...checksOf({ kind: 'winding', judgement, readings }),
    ...(fed ? [() => explainCoil(fed)] : []),
  );
}
