/** Of two departures the one that goes farther, to whichever side. */
export function farther(a: number, b: number): number {
  return Math.abs(b) > Math.abs(a) ? b : a;
}
