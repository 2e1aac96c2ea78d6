/**
 * Moves two heights at least `clear` away from a line between them, the upper one up and the lower
 * one down, so that words at these heights neither meet nor cover the line. At equal heights the
 * first goes down, as the closed stop lies below the open one on a rising sensor.
 */
export function spreadApart(
  heights: readonly number[],
  line: number,
  clear: number,
): readonly number[] {
  const [first = line, second = line] = heights;
  const sign = first < second ? -1 : 1;
  return [
    sign * Math.max(sign * first, sign * line + clear),
    -sign * Math.max(-sign * second, -sign * line + clear),
  ];
}
