/** A column of numbers that grows at its end. */
export interface GrowingColumn {
  append(values: Float64Array): void;
  /** All numbers so far that were not dropped; a view that later appending leaves as it is. */
  values(): Float64Array;
  /** Lets go of the oldest numbers: so many. */
  drop(oldest: number): void;
}

/** Up to here, 128 MB, room is reserved generously; beyond, by doubling. */
const generous = 2 ** 24;

/**
 * Grows sixteenfold, and twofold when it is large. Room that is reserved but not yet written to takes no memory on
 * common systems, while moving numbers to a larger array costs as much as writing them anew.
 *
 * @param most So many numbers it holds at most, as a rule: no more room than that is reserved ahead.
 */
export function growingColumn(most = Number.POSITIVE_INFINITY): GrowingColumn {
  let kept = new Float64Array(2 ** 12);
  let count = 0;
  return {
    append(values) {
      const wanted = count + values.length;
      if (wanted > kept.length) {
        const growth = kept.length < generous ? 16 : 2;
        const larger = new Float64Array(Math.max(wanted, Math.min(most, growth * kept.length)));
        larger.set(kept.subarray(0, count));
        kept = larger;
      }
      kept.set(values, count);
      count = wanted;
    },
    values: () => kept.subarray(0, count),
    drop(oldest) {
      // Anew, so that views taken before stay as they were.
      const rest = kept.subarray(Math.min(oldest, count), count);
      kept = new Float64Array(kept.length);
      kept.set(rest);
      count = rest.length;
    },
  };
}
