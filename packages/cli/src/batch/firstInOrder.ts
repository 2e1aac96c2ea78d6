/** The first so many of ever more, in their order; no more than twice as many are held. */
export function firstInOrder<Item>(most: number, compare: (one: Item, other: Item) => number) {
  let held: Item[] = [];
  const cut = (): readonly Item[] => {
    held = held.sort(compare).slice(0, most);
    return held;
  };
  return {
    add(item: Item): void {
      held.push(item);
      if (held.length >= 2 * most) cut();
    },
    first: cut,
  };
}
