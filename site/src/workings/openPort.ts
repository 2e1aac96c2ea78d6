import { explainOpenPort } from '@truesweep/explain';
import { airOf } from '../calculators/benchAir.js';
import { openPort, type PortValues, sensorOf } from '../calculators/openPort.js';
import { checksOf } from './checks.js';
import { type Written, written } from './written.js';

/** What the open port must read, and how each reading stands to its limits. */
export function workings(values: PortValues): readonly Written[] {
  const { judgement, readings } = openPort(values);
  return written(
    () => explainOpenPort(sensorOf(values), airOf(values), values.supply),
    ...checksOf({ kind: 'pressure', judgement, readings }),
  );
}
