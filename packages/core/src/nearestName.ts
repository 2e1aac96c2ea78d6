/**
 * The known name that a mistyped one is most likely meant to be: by the least Levenshtein distance, whatever the case; of up to a third of the
 * known name's letters, and of one letter always.
 */
export function nearestName(typed: string, known: readonly string[]): string | undefined {
  const wanted = typed.toLowerCase();
  const [nearest] = known
    .map((name) => ({ name, edits: editsBetween(wanted, name.toLowerCase()) }))
    .filter(({ name, edits }) => edits <= Math.max(1, name.length / 3))
    .sort((a, b) => a.edits - b.edits);
  return nearest?.name;
}

/** Levenshtein distance: how many letters must be put in, taken out or changed. */
function editsBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1];
    for (let j = 0; j < b.length; j++) {
      const changed = row[j]! + (letter === b[j] ? 0 : 1);
      next.push(Math.min(changed, row[j + 1]! + 1, next[j]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}
