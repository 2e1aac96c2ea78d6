/** A tick's number without the noise of binary fractions. */
export function plainNumber(value: number): string {
  return String(Number(value.toPrecision(6)));
}
