/** A column of numbers that grows at its end. */
export interface GrowingColumn {
  append(values: Float64Array): void;
  /** All numbers so far; a view that later appending leaves as it is. */
  values(): Float64Array;
}

/** Grows by doubling, so that each number is moved about once on average, and never takes more than twice the room. */
export function growingColumn(): GrowingColumn {
  let kept = new Float64Array(1024);
  let count = 0;
  return {
    append(values) {
      const wanted = count + values.length;
      if (wanted > kept.length) {
        const larger = new Float64Array(Math.max(wanted, 2 * kept.length));
        larger.set(kept.subarray(0, count));
        kept = larger;
      }
      kept.set(values, count);
      count = wanted;
    },
    values: () => kept.subarray(0, count),
  };
}
