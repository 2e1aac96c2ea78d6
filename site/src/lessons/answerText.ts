import { formatMeasure, formatQuantity } from '@truesweep/core';
import type { ExercisePart } from '@truesweep/explain';

/** The right answer to a question, as it is written: four digits and the unit, or the words of the choice. */
export function answerText(part: ExercisePart): string {
  if (part.kind === 'choice')
    return part.options.find(({ id }) => id === part.right)?.text ?? part.right;
  const { value, unit } = part;
  if (unit === '1') return String(value);
  if (unit === '°C') return formatMeasure(value, '°C', 1);
  return formatQuantity(value, unit, { digits: 4, trim: true });
}
