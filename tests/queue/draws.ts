import { soak } from '../counts.js';

/** Numbers from 0 to 1 out of a seed, the same each time; in a soak others each time. The seed is printed, to play it again (`QUEUE_SEED`). */
export function draws(name: string, seed: number): () => number {
  const own = process.env.QUEUE_SEED ?? (soak === 1 ? seed : Math.floor(Math.random() * 2 ** 31));
  console.log(`${name}: seed ${own}`);
  let state = Number(own);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
