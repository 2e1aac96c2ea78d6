import type { Element } from './network.js';

/** The nodes that elements join to one, itself among them. */
export function reachedFrom(elements: readonly Element[], start: string): ReadonlySet<string> {
  const reached = new Set([start]);
  for (let before = 0; before < reached.size; ) {
    before = reached.size;
    for (const { from, to } of elements) {
      if (reached.has(from)) reached.add(to);
      else if (reached.has(to)) reached.add(from);
    }
  }
  return reached;
}
