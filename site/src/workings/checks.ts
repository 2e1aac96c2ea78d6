import { explainLimits } from '@truesweep/explain';
import { type ReadingsOfKind, readingCheckRows } from '@truesweep/wording';

/** How each reading stands to its limits, for {@link written}; a check that nothing was measured for has no working. */
export function checksOf(judged: ReadingsOfKind) {
  const [, ...rows] = readingCheckRows(judged);
  return judged.judgement.checks.map(
    (check, i) => () => explainLimits(check, rows[i]?.[0] ?? '', { kind: 'reading' }),
  );
}
