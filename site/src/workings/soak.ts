import { explainLimits } from '@truesweep/explain';
import { soakWords } from '@truesweep/wording';
import { soak } from '../calculators/soak.js';
import { type Written, written } from './written.js';

/** How far the sensors differ, beside what they may. */
export function workings(values: Parameters<typeof soak>[0]): readonly Written[] {
  const names = { difference: soakWords.difference, one: soakWords.one, other: soakWords.otherOne };
  return written(
    ...soak(values).checks.map(
      (check) => () => explainLimits(check, names[check.check], { kind: 'reading' }),
    ),
  );
}
