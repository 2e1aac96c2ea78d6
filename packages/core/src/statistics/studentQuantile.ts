import { bisection } from '../bisection.js';
import { studentTail } from './studentTail.js';

/** With so many degrees of freedom Student's t is the normal distribution to 0.2 %, on the wide side. */
const most = 1000;

/**
 * The value that a variable of Student's t distribution exceeds with a probability.
 *
 * Degrees that are no whole number are rounded down and more than 1,000 counted as 1,000, which makes the value larger, never smaller.
 *
 * @param probability Above 0 and below 0.5.
 * @param degreesOfFreedom 1 or more.
 */
export function studentQuantile(probability: number, degreesOfFreedom: number): number {
  const degrees = Math.min(most, Math.floor(degreesOfFreedom));
  let high = 2;
  while (studentTail(high, degrees) > probability) high *= 2;
  return bisection((t) => studentTail(t, degrees) > probability, 0, high)[1];
}
