import { checkFields, type FieldRules } from '../fields.js';
import { between } from '../guard.js';
import type { Tolerances } from './tolerances.js';

const part = between(0, 1);

const rules = {
  'source?': part,
  'limiter?': part,
  'track?': part,
  'bottomResidual?': part,
  'topResidual?': part,
  'contact?': part,
  'pullDown?': part,
  'pullUp?': part,
  'pullUpVolts?': part,
  'closedPosition?': part,
  'openPosition?': part,
} satisfies FieldRules & Readonly<Record<`${keyof Tolerances}?`, unknown>>;

/** Refuses a tolerance outside 0 to 1, by path, and one of no known part. */
export function checkTolerances(tolerances: Tolerances): void {
  checkFields(tolerances, 'tolerances', rules);
}
