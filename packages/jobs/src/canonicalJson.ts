/** Plain data as JSON that is the same whatever the order of its fields: names in the order of their code units; fields without a value left out. */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(value, (_, held) =>
    typeof held === 'object' && held !== null && !Array.isArray(held)
      ? Object.fromEntries(Object.entries(held).sort(([one], [other]) => (one < other ? -1 : 1)))
      : held,
  );
}
