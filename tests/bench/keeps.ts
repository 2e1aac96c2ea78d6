import { expect } from 'vitest';

/** A bound: `most`, no more; `least`, no less. What is asserted is what holds; the goal stands beside it. */
export interface Bound {
  readonly side: 'most' | 'least';
  readonly goal: number;
  readonly holds: number;
}

/** Prints a figure with its goal and fails where it misses what holds; what else the test measures is measured all the same. */
export function keeps(name: string, value: number, { side, goal, holds }: Bound): void {
  const sign = side === 'most' ? '≤' : '≥';
  console.log(`${name}: ${value.toPrecision(3)} (holds: ${sign} ${holds}, goal: ${sign} ${goal})`);
  if (side === 'most') expect.soft(value, name).toBeLessThanOrEqual(holds);
  else expect.soft(value, name).toBeGreaterThanOrEqual(holds);
}
