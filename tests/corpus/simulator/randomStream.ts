/** Seeded random numbers of the corpus, apart from the ones of the package under test. */
export interface RandomStream {
  /** Evenly spread, 0 (inclusive) to 1 (exclusive). */
  readonly uniform: () => number;
  readonly normal: () => number;
  readonly between: (low: number, high: number) => number;
  /** Evenly spread in the logarithm; both bounds above 0. */
  readonly logBetween: (low: number, high: number) => number;
  /** Exponential with a mean. */
  readonly exponential: (mean: number) => number;
  readonly pick: <T>(from: readonly T[]) => T;
  readonly chance: (probability: number) => boolean;
  readonly whole: (low: number, high: number) => number;
}

/**
 * A multiply-with-carry pair of 16-bit halves on two 32-bit words (G. Marsaglia's construction, from memory), warmed up on
 * the seed; normal deviates by the Box–Muller transform.
 */
export function randomStream(seed: number): RandomStream {
  let z = (Math.imul(seed ^ 0x5bf03635, 0x2c1b3c6d) ^ 0x3c6ef372) >>> 0 || 1;
  let w = (Math.imul(seed + 0x7f4a7c15, 0x297a2d39) ^ (seed >>> 7)) >>> 0 || 2;
  const word = (): number => {
    z = (Math.imul(36969, z & 0xffff) + (z >>> 16)) >>> 0;
    w = (Math.imul(18000, w & 0xffff) + (w >>> 16)) >>> 0;
    return ((z << 16) + (w & 0xffff)) >>> 0;
  };
  for (let i = 0; i < 20; i++) word();
  const uniform = (): number => word() / 2 ** 32;
  let spare = 0;
  let hasSpare = false;
  const normal = (): number => {
    if (hasSpare) {
      hasSpare = false;
      return spare;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    hasSpare = true;
    return radius * Math.cos(angle);
  };
  const between = (low: number, high: number): number => low + (high - low) * uniform();
  return {
    uniform,
    normal,
    between,
    logBetween: (low, high) => Math.exp(between(Math.log(low), Math.log(high))),
    exponential: (mean) => -mean * Math.log(1 - uniform()),
    pick: (from) => from[Math.floor(uniform() * from.length)]!,
    chance: (probability) => uniform() < probability,
    whole: (low, high) => low + Math.floor(uniform() * (high - low + 1)),
  };
}
