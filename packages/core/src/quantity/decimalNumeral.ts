/** A decimal number still as text: `figures` without a decimal sign, times ten to the `power`. */
export interface DecimalNumeral {
  readonly sign: '' | '-';
  readonly figures: string;
  readonly power: number;
}

/** The nearest number; the power of ten is shifted in the text, so that there is one rounding only. */
export function numeralValue(numeral: DecimalNumeral, shift: number): number {
  const size = Number(`${numeral.figures}e${numeral.power + shift}`);
  return numeral.sign && size !== 0 ? -size : size;
}
