import { explainLimits, type Working, whereWritten } from '@truesweep/explain';
import type { JudgedReadings } from '@truesweep/jobs';
import { readingCheckRows } from '@truesweep/wording';

/** How each single reading stands to its limits. */
export function readingsWorkings(judged: JudgedReadings): readonly Working[] {
  const [, ...rows] = readingCheckRows(judged);
  const { checks } = judged.judgement;
  return whereWritten(
    ...checks.map(
      (check, i) => () => explainLimits(check, rows[i]?.[0] ?? check.check, { kind: 'reading' }),
    ),
  );
}
