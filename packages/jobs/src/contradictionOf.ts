import { type Criteria, defaultCriteria, formatQuantity } from '@truesweep/core';
import { refusal } from './refusal.js';

/** The refusal of limits that contradict each other, a default where a job names none; nothing where they agree. */
export function contradictionOf(named: Readonly<Partial<Criteria>>): string | undefined {
  const { closedNormal, closedMarginal } = { ...defaultCriteria, ...named };
  if (closedMarginal >= closedNormal) return undefined;
  const [normal, marginal] = [closedNormal, closedMarginal].map((value) =>
    formatQuantity(value, '%', { trim: true }),
  );
  const usual = 'where it is not named';
  if (named.closedMarginal === undefined) {
    const wrong = `is ${normal}; it must be at most closedMarginal, ${marginal} ${usual}.`;
    return refusal('out-of-order', wrong, 'closedNormal');
  }
  const least = named.closedNormal === undefined ? `${normal} ${usual}` : normal;
  const wrong = `is ${marginal}; it must be at least closedNormal, ${least}.`;
  return refusal('out-of-order', wrong, 'closedMarginal');
}
