/** A source of seeded random numbers. */
export interface RandomNumbers {
  /** Evenly spread from 0 (inclusive) to 1 (exclusive). */
  uniform(): number;
  /** Normal with mean 0 and standard deviation 1. */
  normal(): number;
  /** Fills a list with numbers spread like those of `uniform`, faster; what `uniform` drew ahead is left to it. */
  fill(numbers: Float64Array): void;
}

/**
 * A stream of random numbers that one seed always repeats.
 *
 * Method: xoshiro128++ (D. Blackman and S. Vigna, "Scrambled linear pseudorandom number generators",
 * ACM Trans. Math. Softw. 47, 2021) seeded by a 32-bit mixing sequence; normal deviates by Marsaglia's polar
 * method (G. Marsaglia and T. A. Bray, SIAM Review 6, 1964).
 *
 * @param seed Any whole number; its lowest 32 bits count.
 *
 * @example
 * randomNumbers(7).uniform() === randomNumbers(7).uniform() // => true
 */
export function randomNumbers(seed: number): RandomNumbers {
  let mixing = seed | 0;
  const mixed = (): number => {
    mixing = (mixing + 0x9e3779b9) | 0;
    let bits = Math.imul(mixing ^ (mixing >>> 16), 0x21f0aaad);
    bits = Math.imul(bits ^ (bits >>> 15), 0x735a2d97);
    return bits ^ (bits >>> 15);
  };
  let a = mixed();
  let b = mixed();
  let c = mixed();
  let d = mixed();
  let spare = Number.NaN;

  const fill = (numbers: Float64Array): void => {
    // Until the list is full the generator's state stays in registers.
    let [p, q, r, s] = [a, b, c, d];
    for (let i = 0; i < numbers.length; i++) {
      const sum = (p + s) | 0;
      const result = (((sum << 7) | (sum >>> 25)) + p) | 0;
      const shifted = q << 9;
      r ^= p;
      s ^= q;
      q ^= r;
      p ^= s;
      r ^= shifted;
      s = (s << 11) | (s >>> 21);
      numbers[i] = (result >>> 0) / 2 ** 32;
    }
    [a, b, c, d] = [p, q, r, s];
  };

  const ahead = new Float64Array(256);
  let used = ahead.length;
  const uniform = (): number => {
    if (used === ahead.length) {
      fill(ahead);
      used = 0;
    }
    return ahead[used++]!;
  };

  const normal = (): number => {
    if (!Number.isNaN(spare)) {
      const kept = spare;
      spare = Number.NaN;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      if (square === 0 || square >= 1) continue;
      const factor = Math.sqrt((-2 * Math.log(square)) / square);
      spare = y * factor;
      return x * factor;
    }
  };

  return { uniform, normal, fill };
}
