/** The middle one of some values, the upper of two; NaN where there are none. */
export function median(values: Float64Array): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[sorted.length >> 1] ?? Number.NaN;
}
