/** Items in chains by their level: each lies within a gap of the one before it. */
export function chainsOf<T>(
  items: readonly T[],
  levelOf: (item: T) => number,
  gap: number,
): readonly T[][] {
  const chains: T[][] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (const one of items.toSorted((a, b) => levelOf(a) - levelOf(b))) {
    const level = levelOf(one);
    if (level - last <= gap) chains[chains.length - 1]!.push(one);
    else chains.push([one]);
    last = level;
  }
  return chains;
}
