/**
 * One-sided 95 % Clopper–Pearson bound of a proportion: the share at which so many hits or more (for the lower bound), or so few
 * or fewer (for the upper bound), would be seen with 5 % probability. By bisection on the binomial tail.
 *
 * Source: C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404–413.
 */
export function clopperPearson(side: 'lower' | 'upper', hits: number, trials: number): number {
  if (trials === 0) return side === 'lower' ? 0 : 1;
  if (side === 'lower') return 1 - clopperPearson('upper', trials - hits, trials);
  if (hits === trials) return 1;
  let [low, high] = [0, 1];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (atMost(hits, trials, middle) > 0.05) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Probability of at most so many hits. */
function atMost(hits: number, trials: number, share: number): number {
  let term = trials * Math.log1p(-share);
  let sum = Math.exp(term);
  for (let k = 1; k <= hits; k++) {
    term += Math.log((trials - k + 1) / k) + Math.log(share) - Math.log1p(-share);
    sum += Math.exp(term);
  }
  return sum;
}
