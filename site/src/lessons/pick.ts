/** What stands at a slider's place; the last where the place is beyond. */
export function pick<Item>(items: readonly Item[], place = 0): Item {
  return items[Math.min(place, items.length - 1)] as Item;
}
