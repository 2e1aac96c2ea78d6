import { farEnd } from './farEnd.js';
import type { Element } from './network.js';

/** The elements on a way from one node to another, none where they are one node; nothing without a way. */
export function pathBetween(
  elements: readonly Element[],
  start: string,
  goal: string,
  seen: Set<string> = new Set(),
): readonly Element[] | undefined {
  if (start === goal) return [];
  seen.add(start);
  for (const element of elements) {
    const next = farEnd(element, start);
    if (next === undefined || seen.has(next)) continue;
    const rest = pathBetween(elements, next, goal, seen);
    if (rest) return [element, ...rest];
  }
  return undefined;
}
