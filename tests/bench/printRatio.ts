import type { BenchStorage } from 'vitest';

type Timed = Pick<ReturnType<BenchStorage<string>['get']>, 'name' | 'latency'>;

/** One line: how many times longer the one took than the other in this run, by their medians, beside what is asked. */
export function printRatio(one: Timed, other: Timed, asked: string) {
  const ratio = one.latency.p50 / other.latency.p50;
  console.log(`${one.name} / ${other.name}: ${ratio.toPrecision(3)} (asked: ${asked})`);
}
