import { orderStatistic } from './orderStatistic.js';

/** The lowest of the numbers handed over so far. */
export interface LowestValues {
  add(value: number): void;
  /** The highest of those kept. */
  last(): number;
}

/**
 * Keeps the lowest of many numbers in little memory: twice as many are held, and when their place is full the
 * higher half is let go.
 *
 * @param count How many are kept, 1 or more; at least as many must be handed over.
 *
 * @example
 * const lowest = lowestValues(2);
 * for (const value of [5, 1, 4, 2, 3]) lowest.add(value);
 * lowest.last() // => 2
 */
export function lowestValues(count: number): LowestValues {
  const held = new Float64Array(2 * count);
  let size = 0;
  let limit = Number.POSITIVE_INFINITY;
  return {
    add(value) {
      if (value > limit) return;
      held[size++] = value;
      if (size < held.length) return;
      limit = orderStatistic(held, count - 1);
      size = count;
    },
    last: () => orderStatistic(held.subarray(0, size), count - 1),
  };
}
