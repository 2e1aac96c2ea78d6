import type { BenchStorage } from 'vitest';

type Timed = Pick<ReturnType<BenchStorage<string>['get']>, 'name' | 'latency'>;

/**
 * One line: how many times longer the one took than the other in this run, by the fastest
 * of their rounds, which other work of the machine disturbs least; beside it what is asked.
 */
export function printRatio(one: Timed, other: Timed, asked: string) {
  const ratio = one.latency.min / other.latency.min;
  console.log(`${one.name} / ${other.name}: ${ratio.toPrecision(3)} (asked: ${asked})`);
}
