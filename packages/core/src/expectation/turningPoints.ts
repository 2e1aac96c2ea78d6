/** Places between 0 and 1, dense toward both ends, where a stiff load bends a curve within a sliver. */
const near = /* @__PURE__ */ Array.from({ length: 27 }, (_, i) => 10 ** (-10 + i / 3));
const middle = /* @__PURE__ */ Array.from({ length: 19 }, (_, i) => (i + 1) / 20);

/**
 * The places inside an interval where a continuous function turns, rising: brackets on a grid, then ternary search.
 * Steps of no more than the rounding of its largest value count as level.
 */
export function turningPoints(
  value: (at: number) => number,
  from: number,
  to: number,
): readonly number[] {
  const parts = [0, ...near, ...middle, ...near.map((part) => 1 - part).reverse(), 1];
  const places = parts.map((part) => from * (1 - part) + to * part);
  const values = places.map(value);
  const rounding = 8 * Number.EPSILON * Math.max(...values.map(Math.abs));
  const turns: number[] = [];
  let direction = 0;
  let since = from;
  for (let i = 1; i < places.length; i++) {
    const step = values[i]! - values[i - 1]!;
    if (Math.abs(step) <= rounding) continue;
    if (step * direction < 0) turns.push(turningPoint(value, since, places[i]!, direction));
    direction = Math.sign(step);
    since = places[i - 1]!;
  }
  return turns;
}

/** The highest (sign 1) or lowest (sign −1) place of a function with one turn between two places, to 3e-13 of the way. */
function turningPoint(
  value: (at: number) => number,
  from: number,
  to: number,
  sign: number,
): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 72; i++) {
    const third = (high - low) / 3;
    if (sign * value(low + third) < sign * value(high - third)) low += third;
    else high -= third;
  }
  return (low + high) / 2;
}
