/** A column of numbers that grows at its end. */
export interface GrowingColumn {
  append(values: Float64Array): void;
  /** All numbers so far; a view that later appending leaves as it is. */
  values(): Float64Array;
}

/** Up to here, 128 MB, room is reserved generously; beyond, by doubling. */
const generous = 2 ** 24;

/**
 * Grows sixteenfold, and twofold when it is large. Room that is reserved but not yet written to takes no memory on
 * common systems, while moving numbers to a larger array costs as much as writing them anew.
 */
export function growingColumn(): GrowingColumn {
  let kept = new Float64Array(2 ** 12);
  let count = 0;
  return {
    append(values) {
      const wanted = count + values.length;
      if (wanted > kept.length) {
        const growth = kept.length < generous ? 16 : 2;
        const larger = new Float64Array(Math.max(wanted, growth * kept.length));
        larger.set(kept.subarray(0, count));
        kept = larger;
      }
      kept.set(values, count);
      count = wanted;
    },
    values: () => kept.subarray(0, count),
  };
}
