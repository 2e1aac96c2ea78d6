import type { Element } from './network.js';
import { pathBetween } from './pathBetween.js';

/**
 * The loops in which no resistance limits the current, each with its closing element first: one of 0 Ω that joins
 * what 0 Ω joins already. Leaving it out opens the loop and changes no voltage.
 */
export function rigidLoops(elements: readonly Element[]): readonly (readonly Element[])[] {
  const forest: Element[] = [];
  return elements
    .filter(({ ohms }) => ohms === 0)
    .flatMap((closing) => {
      const path = pathBetween(forest, closing.from, closing.to);
      if (path) return [[closing, ...path]];
      forest.push(closing);
      return [];
    });
}

/** Whether the sources of a loop disagree, so that Kirchhoff's voltage law can't hold. */
export function isContradictory([closing, ...path]: readonly Element[]): boolean {
  let node = closing!.from;
  let rise = 0;
  for (const { from, to, volts = 0 } of path) {
    rise += from === node ? volts : -volts;
    node = from === node ? to : from;
  }
  return rise !== (closing!.volts ?? 0);
}
