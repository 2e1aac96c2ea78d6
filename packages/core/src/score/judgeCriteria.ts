import { type Criteria, loosenedCriteria } from '../criteria.js';
import type { Check } from './score.js';

/** How many criteria are so loose that no sweep may pass by them; nothing where none is. */
export function judgeCriteria(criteria: Criteria): readonly Check[] {
  const measured = loosenedCriteria(criteria).filter(({ tooLoose }) => tooLoose).length;
  if (measured === 0) return [];
  const limits = { measured, highLimit: 0, margin: 0 - measured, limitFrom: 'criteria' } as const;
  return [{ check: 'criteria', outcome: 'cannot-tell', unit: 'count', ...limits }];
}
