import { farEnd } from './farEnd.js';
import type { Element } from './network.js';

/** The nodes that elements join to one, itself among them. */
export function reachedFrom(elements: readonly Element[], start: string): ReadonlySet<string> {
  const reached = new Set([start]);
  // A set hands out what is added while it is gone through.
  for (const node of reached) {
    for (const element of elements) reached.add(farEnd(element, node) ?? node);
  }
  return reached;
}
