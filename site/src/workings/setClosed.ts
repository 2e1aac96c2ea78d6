import { explainClosedSetting } from '@truesweep/explain';
import type { setClosed } from '../calculators/setClosed.js';
import { type Written, written } from './written.js';

/** How far to turn. */
export function workings(values: Parameters<typeof setClosed>[0]): readonly Written[] {
  const { readingNow, turned, readingThen, readingWanted, readingUncertainty } = values;
  const by = { kind: 'second-reading', degrees: turned, volts: readingThen } as const;
  return written(() => explainClosedSetting(readingNow, readingWanted, by, readingUncertainty));
}
