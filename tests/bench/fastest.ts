/** The shortest time of some rounds, s: other work of the machine disturbs it least. */
export function fastest(work: () => void, rounds: number): number {
  let shortest = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round++) {
    const begun = performance.now();
    work();
    shortest = Math.min(shortest, performance.now() - begun);
  }
  return shortest / 1000;
}
