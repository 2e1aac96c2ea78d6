/** Adds to the number that a map holds for a key; 0 where it holds none. */
export function addTo<Key>(sums: Map<Key, number>, key: Key, value: number): void {
  sums.set(key, (sums.get(key) ?? 0) + value);
}
