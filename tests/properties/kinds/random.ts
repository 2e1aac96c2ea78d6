/** Draws of one seed: even ones, normal ones and choices. */
export interface Draws {
  /** Even between two bounds. */
  between(low: number, high: number): number;
  /** Even on a logarithmic scale. */
  log(low: number, high: number): number;
  /** Normal with a standard deviation, about 0. */
  normal(deviation: number): number;
  /** True with a probability. */
  chance(probability: number): boolean;
  oneOf<Choice>(choices: readonly Choice[]): Choice;
}

/** Method: a linear congruential generator of 64 bits (constants of D. Knuth's MMIX, from memory), its upper 53 bits; normal by Box and Muller. */
export function drawsOf(seed: number): Draws {
  let state = BigInt(seed) * 2n + 1n;
  const next = () => {
    state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffff_ffff_ffff_ffffn;
    return Number(state >> 11n) / 2 ** 53;
  };
  for (let i = 0; i < 5; i++) next();
  const between = (low: number, high: number) => low + (high - low) * next();
  return {
    between,
    log: (low, high) => Math.exp(between(Math.log(low), Math.log(high))),
    normal: (deviation) =>
      deviation * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    chance: (probability) => next() < probability,
    oneOf: (choices) => choices[Math.floor(next() * choices.length)]!,
  };
}
