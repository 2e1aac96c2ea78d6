import type { Seconds } from '@truesweep/core';
import type { Chatter } from './plan.js';
import type { RandomStream } from './randomStream.js';

/** A contact that opens and closes at random (random telegraph noise); each call moves it on by one step. */
export function telegraph(chatter: Chatter, step: Seconds, random: RandomStream): () => boolean {
  let open = true;
  let left = random.exponential(chatter.open);
  return () => {
    const now = open;
    left -= step;
    while (left <= 0) {
      open = !open;
      left += Math.max(step, random.exponential(open ? chatter.open : chatter.closed));
    }
    return now;
  };
}
