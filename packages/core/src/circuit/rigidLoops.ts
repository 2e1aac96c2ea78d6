import type { Element } from './network.js';

/** A closed loop of nothing but 0 Ω parts and ideal voltage sources. */
export interface RigidLoop {
  /** The element that closes the loop; leaving it out opens the loop and changes no voltage. */
  readonly closing: Element;
  /** Every element of the loop, the closing one included. */
  readonly members: readonly Element[];
  /** True where the loop's sources disagree, so that Kirchhoff's voltage law can't hold. */
  readonly contradictory: boolean;
}

interface Link {
  readonly element: Element;
  readonly node: string;
  /** Potential of `node` above the node that the link starts from. */
  readonly rise: number;
}

/**
 * Finds the loops in which no resistance limits the current, by growing a forest of rigid links and
 * looking at each link that would close it.
 */
export function rigidLoops(elements: readonly Element[]): readonly RigidLoop[] {
  const links = new Map<string, Link[]>();
  const loops: RigidLoop[] = [];
  for (const element of elements) {
    const rise = rigidRise(element);
    if (rise === undefined) continue;
    const path = pathBetween(links, element.from, element.to);
    if (path) {
      const along = path.reduce((sum, link) => sum + link.rise, 0);
      const members = [...path.map((link) => link.element), element];
      loops.push({ closing: element, members, contradictory: along !== rise });
    } else {
      append(links, element.from, { element, node: element.to, rise });
      append(links, element.to, { element, node: element.from, rise: -rise });
    }
  }
  return loops;
}

function rigidRise(element: Element): number | undefined {
  if (element.kind === 'voltage') return element.volts;
  return element.kind === 'resistor' && element.ohms === 0 ? 0 : undefined;
}

function append(links: Map<string, Link[]>, node: string, link: Link): void {
  const list = links.get(node);
  if (list) list.push(link);
  else links.set(node, [link]);
}

/** The links from one node of the forest to another, an empty path where they are one node. */
function pathBetween(
  links: ReadonlyMap<string, readonly Link[]>,
  start: string,
  goal: string,
  without?: Element,
): readonly Link[] | undefined {
  if (start === goal) return [];
  for (const link of links.get(start) ?? []) {
    if (link.element === without) continue;
    const rest = pathBetween(links, link.node, goal, link.element);
    if (rest) return [link, ...rest];
  }
  return undefined;
}
