import { bisection } from '../bisection.js';
import { listOf } from '../fields.js';
import { between } from '../guard.js';
import { digamma, trigamma } from '../statistics/polygamma.js';

/** How far values lie from their own line, as it was estimated. */
export interface Scatter {
  /** Standard deviation, in the unit of the values, 0 or more. */
  readonly deviation: number;
  /** How many degrees of freedom it rests on, above 0; `Infinity` where it is as good as known. */
  readonly degreesOfFreedom: number;
}

const rule = listOf({ deviation: between(0, 1e12), degreesOfFreedom: between(1, 1e9) });

/** Fewer scatters say nothing of how they differ. */
const fewest = 3;

/**
 * What many series together say of how far the values of one of them scatter: the scatter of them all, worth as many degrees of freedom as they
 * are alike. Sensors that repeat equally well share what they know; where each scatters in its own way little is shared.
 *
 * Method: variances drawn from a scaled inverse χ² distribution, its two parameters from the mean and the variance of their logarithms (G. K. Smyth, Linear
 * models and empirical Bayes methods for assessing differential expression in microarray experiments, Statistical Applications in
 * Genetics and Molecular Biology 3 (2004), article 3, section 6.2; from memory). Series without any scatter, which a coarse recorder makes, are left out, so that the rest errs on the wide side.
 *
 * @param scatters One of each series, in one unit; 0 to 10¹² with 1 to 10⁹ degrees of freedom.
 * @returns Nothing where fewer than three of them scatter.
 * @throws InputError for anything but such a list.
 *
 * @example
 * const alike = Array.from({ length: 40 }, () => ({ deviation: 0.002, degreesOfFreedom: 3 }));
 * pooledScatter(alike).degreesOfFreedom // => Infinity
 * pooledScatter(alike.slice(38)) // => undefined
 */
export function pooledScatter(scatters: readonly Scatter[]): Scatter | undefined {
  rule(scatters, 'scatters');
  const known = scatters.filter(({ deviation }) => deviation > 0);
  const count = known.length;
  if (count < fewest) return undefined;
  const logs = known.map(
    ({ deviation, degreesOfFreedom }) =>
      2 * Math.log(deviation) - digamma(degreesOfFreedom / 2) + Math.log(degreesOfFreedom / 2),
  );
  const mean = logs.reduce((sum, one) => sum + one, 0) / count;
  const variance = logs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (count - 1);
  const chance =
    known.reduce((sum, { degreesOfFreedom }) => sum + trigamma(degreesOfFreedom / 2), 0) / count;
  const own = variance - chance;
  // They differ by no more than chance makes them.
  if (!(own > 0)) return { deviation: Math.exp(mean / 2), degreesOfFreedom: Infinity };
  const half = trigammaInverse(own);
  return {
    deviation: Math.exp((mean + digamma(half) - Math.log(half)) / 2),
    degreesOfFreedom: 2 * half,
  };
}

/** The x at which ψ′(x) has a value above 0: ψ′ falls and lies between 1/x and 1/x + 1/x². */
function trigammaInverse(value: number): number {
  const low = 1 / value;
  const high = low + Math.sqrt(low) + 1;
  return bisection((x) => trigamma(x) > value, 0, high, low * 1e-9)[1];
}
