/** Places between 0 and 1, dense toward both ends, where a stiff load bends a curve within a sliver. */
const grid: readonly number[] = [
  ...Array.from({ length: 36 }, (_, i) => 10 ** (-9 + i / 4.5)).filter((part) => part < 0.05),
  ...Array.from({ length: 37 }, (_, i) => 0.05 + i / 40),
  ...Array.from({ length: 36 }, (_, i) => 1 - 10 ** (-1.4 - i / 4.5)).filter((part) => part > 0.95),
];

/**
 * The places inside an interval where a smooth function turns, each to 1e-9 of the interval or finer: brackets
 * on a grid, then golden-section search.
 */
export function turningPoints(
  value: (at: number) => number,
  from: number,
  to: number,
): readonly number[] {
  const places = [from, ...grid.map((part) => from + (to - from) * part), to];
  const values = places.map(value);
  const turns: number[] = [];
  for (let i = 1; i < places.length - 1; i++) {
    const before = values[i]! - values[i - 1]!;
    const after = values[i + 1]! - values[i]!;
    if (before * after >= 0) continue;
    turns.push(goldenSection(value, places[i - 1]!, places[i + 1]!, Math.sign(before)));
  }
  return turns;
}

/** The highest (sign 1) or lowest (sign −1) place of a function with one turn between two places. */
function goldenSection(
  value: (at: number) => number,
  from: number,
  to: number,
  sign: number,
): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  let left = high - golden * (high - low);
  let right = low + golden * (high - low);
  let [atLeft, atRight] = [sign * value(left), sign * value(right)];
  const finest = Math.max(1e-9 * (to - from), 1e-15 * Math.max(Math.abs(from), Math.abs(to)));
  while (high - low > finest) {
    if (atLeft < atRight) {
      low = left;
      left = right;
      atLeft = atRight;
      right = low + golden * (high - low);
      atRight = sign * value(right);
    } else {
      high = right;
      right = left;
      atRight = atLeft;
      left = high - golden * (high - low);
      atLeft = sign * value(left);
    }
  }
  return (low + high) / 2;
}
