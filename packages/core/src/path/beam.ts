import { type Hypothesis, newHypothesis } from './hypothesis.js';

/** So many explanations are followed at once. */
const width = 20;
/** One that is so much costlier than the best has no chance any more, nats: one in four thousand million. */
export const hopeless = 22;
/** Of two alike in different motions the cheaper one is enough if it is cheaper by so many nats. */
const clearly = 3;

/** The cheapest explanations of a bin. Their objects are used again. */
export interface Beam {
  readonly kept: readonly Hypothesis[];
  /** Costs from which on a new one is not worth making. */
  readonly limit: number;
  spare(): Hypothesis;
  offer(one: Hypothesis): void;
  /** Hands over what was kept and begins anew. */
  next(): Hypothesis[];
  release(list: Hypothesis[]): void;
}

export function beam(): Beam {
  const pool: Hypothesis[] = [];
  let kept: Hypothesis[] = [];
  let other: Hypothesis[] = [];
  let best = Number.POSITIVE_INFINITY;
  // Nearer to each other than to what either may be: half a variance, in level and in speed.
  const isAlike = (a: Hypothesis, b: Hypothesis): boolean =>
    (a.level - b.level) ** 2 < Math.max(a.levelVariance, b.levelVariance) / 2 &&
    (a.speed - b.speed) ** 2 < Math.max(a.speedVariance, b.speedVariance) / 2;
  /** Whether one that goes on alike makes the new one needless; those that the new one makes needless go. */
  const isNeedless = (one: Hypothesis): boolean => {
    for (let k = 0; k < kept.length; k++) {
      const another = kept[k]!;
      if (another.contact !== 'sound' || !isAlike(another, one)) continue;
      const margin = another.motion === one.motion ? 0 : clearly;
      if (one.cost >= another.cost + margin) return true;
      if (another.cost < one.cost + margin) continue;
      pool.push(another);
      kept[k--] = kept[kept.length - 1]!;
      kept.pop();
    }
    return false;
  };
  return {
    get kept() {
      return kept;
    },
    get limit() {
      return best + hopeless;
    },
    spare: () => pool.pop() ?? newHypothesis(),
    offer(one) {
      if (!(one.cost < best + hopeless) || (one.contact === 'sound' && isNeedless(one))) {
        pool.push(one);
        return;
      }
      if (one.cost < best) best = one.cost;
      if (kept.length < width) {
        kept.push(one);
        return;
      }
      let costliest = 0;
      for (let k = 1; k < kept.length; k++)
        if (kept[k]!.cost > kept[costliest]!.cost) costliest = k;
      if (kept[costliest]!.cost > one.cost) {
        pool.push(kept[costliest]!);
        kept[costliest] = one;
      } else pool.push(one);
    },
    next() {
      const now = kept;
      kept = other;
      other = now;
      kept.length = 0;
      best = Number.POSITIVE_INFINITY;
      return now.sort((a, b) => a.cost - b.cost);
    },
    release(list) {
      for (const one of list) pool.push(one);
    },
  };
}
