import type { Element } from './network.js';

/** The node at the other end of an element; nothing where it doesn't meet the one given. */
export function farEnd(
  { from, to }: Pick<Element, 'from' | 'to'>,
  node: string,
): string | undefined {
  return from === node ? to : to === node ? from : undefined;
}
