/**
 * Probability that a variable of Student's t distribution lies above a value.
 *
 * Method: the finite series in the cosine (M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4; from memory).
 *
 * @param t 0 or more; `Infinity` too.
 * @param degreesOfFreedom A whole number, 1 or more.
 */
export function studentTail(t: number, degreesOfFreedom: number): number {
  if (t === Infinity) return 0;
  const angle = Math.atan(t / Math.sqrt(degreesOfFreedom));
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  const isOdd = degreesOfFreedom % 2 === 1;
  let term = isOdd ? cosine : 1;
  let sum = degreesOfFreedom === 1 ? 0 : term;
  for (let k = isOdd ? 3 : 2; k <= degreesOfFreedom - 2; k += 2) {
    term *= (cosine * cosine * (k - 1)) / k;
    sum += term;
  }
  const within = isOdd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
  return Math.max(0, (1 - within) / 2);
}
