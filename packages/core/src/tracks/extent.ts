/** The lowest and the highest of some numbers; ±∞ of none. */
export function extent(values: Float64Array): readonly [low: number, high: number] {
  let [low, high] = [Infinity, -Infinity];
  for (let i = 0; i < values.length; i++) {
    if (values[i]! < low) low = values[i]!;
    if (values[i]! > high) high = values[i]!;
  }
  return [low, high];
}
