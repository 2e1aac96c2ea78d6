/** A length, finer than any screen shows. */
export function toHundredths(length: number): number {
  return Math.round(length * 100) / 100;
}
