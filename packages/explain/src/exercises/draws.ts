import { type Ohms, type PreferredSeries, preferredValues } from '@truesweep/core';

/** Random choices that one seed always repeats. */
export interface Draws {
  /** From 0 (inclusive) to 1 (exclusive). */
  uniform(): number;
  /** One of several, each as likely. */
  one<Item>(items: readonly Item[]): Item;
  /** A whole multiple of a step between two bounds. */
  stepped(from: number, to: number, step: number): number;
  /** A preferred resistance between two bounds, Ω. */
  ohms(series: PreferredSeries, from: Ohms, to: Ohms): Ohms;
}

/**
 * Draws by a seed: a 32-bit Weyl sequence whose terms are mixed by the last steps of MurmurHash3 (constants from memory). A teacher's round
 * numbers ask no more of it; core's own generator is not public.
 */
export function drawsFrom(seed: number): Draws {
  let term = seed | 0;
  const uniform = (): number => {
    term = (term + 0x9e3779b9) | 0;
    let bits = Math.imul(term ^ (term >>> 16), 0x85ebca6b);
    bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
    return ((bits ^ (bits >>> 16)) >>> 0) / 2 ** 32;
  };
  const one = <Item>(items: readonly Item[]): Item => items[Math.floor(uniform() * items.length)]!;
  return {
    uniform,
    one,
    stepped: (from, to, step) => {
      const count = Math.round((to - from) / step);
      const value = from + step * Math.floor(uniform() * (count + 1));
      return Number(value.toPrecision(12));
    },
    ohms: (series, from, to) => one(preferredBetween(series, from, to)),
  };
}

const decades: readonly number[] = [1, 10, 100];

/** Preferred resistances between two bounds from 100 Ω to below 100 kΩ. */
function preferredBetween(series: PreferredSeries, from: Ohms, to: Ohms): readonly Ohms[] {
  return decades
    .flatMap((decade) => preferredValues(series).map((figures) => figures * decade))
    .filter((ohms) => ohms >= from && ohms <= to);
}
