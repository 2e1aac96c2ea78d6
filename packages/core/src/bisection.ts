/** Enough to part any two numbers that lie within a factor of 10⁴⁵ of each other; a border at 0 itself would take over a thousand. */
const mostSteps = 200;

/**
 * Bisection: halves a bracket until it is as narrow as asked, or no number lies between its ends.
 *
 * @param holds Asked between the ends only; true from the lower one up to the border, false beyond it.
 * @param width As narrow as asked; to the last figure when left out.
 * @returns The highest place that is known to lie below the border, and the lowest above it.
 */
export function bisection(
  holds: (at: number) => boolean,
  from: number,
  to: number,
  width = 0,
): readonly [low: number, high: number] {
  let [low, high] = [from, to];
  for (let step = 0; step < mostSteps && high - low > width; step++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return [low, high];
}
