import type { Departure } from './departure.js';

/** Whether a departure leads from one level to another, and does not come back. */
export function isJump(kind: Departure['kind']): boolean {
  return kind === 'dead-spot' || kind === 'step';
}
