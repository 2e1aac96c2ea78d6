/** From here on the asymptotic series are good to the last figures. */
const far = 12;

/**
 * Digamma function ψ(x), the derivative of ln Γ(x).
 *
 * Method: the recurrence up to 12, from there the asymptotic series (M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 6.3.5
 * and 6.3.18; from memory).
 *
 * @param x Above 0.
 */
export function digamma(x: number): number {
  let sum = 0;
  let at = x;
  for (; at < far; at++) sum -= 1 / at;
  const square = 1 / (at * at);
  const series =
    1 / 12 - square * (1 / 120 - square * (1 / 252 - square * (1 / 240 - square / 132)));
  return sum + Math.log(at) - 1 / (2 * at) - square * series;
}

/**
 * Trigamma function ψ′(x).
 *
 * Method: as for {@link digamma} (6.4.6 and 6.4.12; from memory).
 *
 * @param x Above 0.
 */
export function trigamma(x: number): number {
  let sum = 0;
  let at = x;
  for (; at < far; at++) sum += 1 / (at * at);
  const square = 1 / (at * at);
  const series =
    1 / 6 - square * (1 / 30 - square * (1 / 42 - square * (1 / 30 - (square * 5) / 66)));
  return sum + 1 / at + square / 2 + (square / at) * series;
}
