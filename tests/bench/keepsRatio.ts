import type { BenchStorage } from 'vitest';
import { type Bound, keeps } from './keeps.js';

type Timed = Pick<ReturnType<BenchStorage<string>['get']>, 'name' | 'latency'>;

/**
 * How many times longer the one took than the other in this run, by the fastest of their rounds, which other work of
 * the machine disturbs least.
 */
export function keepsRatio(one: Timed, other: Timed, bound: Bound): void {
  keeps(`${one.name} / ${other.name}`, one.latency.min / other.latency.min, bound);
}
