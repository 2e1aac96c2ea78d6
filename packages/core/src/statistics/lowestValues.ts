import { orderStatistic } from './orderStatistic.js';

/** The lowest of the numbers handed over so far. */
export interface LowestValues {
  add(values: Float64Array): void;
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
 * lowest.add(Float64Array.of(5, 1, 4));
 * lowest.add(Float64Array.of(2, 3));
 * lowest.last() // => 2
 */
export function lowestValues(count: number): LowestValues {
  const held = new Float64Array(2 * count);
  let size = 0;
  let limit = Infinity;
  const letGo = (): void => {
    limit = orderStatistic(held, count - 1);
    size = count;
  };
  return {
    add(values) {
      for (let i = 0; i < values.length; i++) {
        if (values[i]! > limit) continue;
        held[size++] = values[i]!;
        if (size === held.length) letGo();
      }
    },
    last: () => orderStatistic(held.subarray(0, size), count - 1),
  };
}
