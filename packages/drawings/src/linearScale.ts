/** Where a value of a domain lies in a range, both from end to end; beyond them on the same straight line. */
export function linearScale(
  [low, high]: readonly [number, number],
  [from, to]: readonly [number, number],
): (value: number) => number {
  return (value) => {
    const part = (value - low) / (high - low);
    return from * (1 - part) + to * part;
  };
}
