/**
 * The value that would stand at a rank if all were sorted; smaller ones end up before it, larger ones behind.
 *
 * Method: C. A. R. Hoare, "Algorithm 65: Find", Communications of the ACM 4, 1961 (from memory), with the middle of
 * three values as pivot: linear on average, where sorting is not.
 *
 * @param values At least one number, none of them NaN; put into another order in place.
 * @param rank 0 for the smallest.
 *
 * @example
 * orderStatistic(Float64Array.of(5, 1, 4), 1) // => 4
 */
export function orderStatistic(values: Float64Array, rank: number): number {
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const pivot = middleOfThree(values[low]!, values[(low + high) >>> 1]!, values[high]!);
    let left = low;
    let right = high;
    while (left <= right) {
      while (values[left]! < pivot) left++;
      while (pivot < values[right]!) right--;
      if (left > right) break;
      const moved = values[left]!;
      values[left++] = values[right]!;
      values[right--] = moved;
    }
    if (rank <= right) high = right;
    else if (rank >= left) low = left;
    else break;
  }
  return values[rank]!;
}

function middleOfThree(a: number, b: number, c: number): number {
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}
