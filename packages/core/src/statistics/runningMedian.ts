/**
 * The median of the values around each place, `halfWidth` to either side; the window shrinks evenly toward
 * both ends. A monotone stretch passes unchanged, so slow movement brings no lag, and anything shorter
 * than half the window is taken out (J. W. Tukey, Exploratory Data Analysis, 1977; from memory).
 *
 * Method: a sorted window with binary search, n·log w comparisons.
 *
 * @param medians Where to write them; an array of their own when left out.
 */
export function runningMedian(
  values: Float64Array,
  halfWidth: number,
  medians: Float64Array = new Float64Array(values.length),
): Float64Array {
  const widest = Math.min(halfWidth, values.length);
  const window = new Float64Array(2 * widest + 1);
  let size = 0;
  let from = 0;
  let to = 0;
  for (let i = 0; i < values.length; i++) {
    const reach = Math.min(widest, i, values.length - 1 - i);
    while (from < i - reach) size = remove(window, size, values[from++]!);
    while (to <= i + reach) size = insert(window, size, values[to++]!);
    medians[i] = window[size >> 1]!;
  }
  return medians;
}

function insert(window: Float64Array, size: number, value: number): number {
  const at = place(window, size, value);
  window.copyWithin(at + 1, at, size);
  window[at] = value;
  return size + 1;
}

function remove(window: Float64Array, size: number, value: number): number {
  const at = place(window, size, value);
  window.copyWithin(at, at + 1, size);
  return size - 1;
}

/** The first place in a sorted window whose value is not below the given one. */
function place(window: Float64Array, size: number, value: number): number {
  let low = 0;
  let high = size;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (window[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}
