import type { Element } from './network.js';
import { pathBetween } from './pathBetween.js';

/** A closed loop of nothing but 0 Ω parts and ideal voltage sources. */
export interface RigidLoop {
  /** The element that closes the loop; leaving it out opens the loop and changes no voltage. */
  readonly closing: Element;
  /** Every element of the loop, the closing one included. */
  readonly members: readonly Element[];
  /** True where the loop's sources disagree, so that Kirchhoff's voltage law can't hold. */
  readonly contradictory: boolean;
}

/** Finds the loops in which no resistance limits the current: each 0 Ω that joins what 0 Ω joins already. */
export function rigidLoops(elements: readonly Element[]): readonly RigidLoop[] {
  const forest: Element[] = [];
  const loops: RigidLoop[] = [];
  for (const closing of elements) {
    if (closing.ohms > 0) continue;
    const path = pathBetween(forest, closing.from, closing.to);
    if (path) {
      const contradictory = riseAlong(path, closing.from) !== (closing.volts ?? 0);
      loops.push({ closing, members: [...path, closing], contradictory });
    } else forest.push(closing);
  }
  return loops;
}

function riseAlong(path: readonly Element[], start: string): number {
  let node = start;
  let rise = 0;
  for (const { from, to, volts = 0 } of path) {
    rise += from === node ? volts : -volts;
    node = from === node ? to : from;
  }
  return rise;
}
