/**
 * The rates of serial lines that are usual, baud, the likeliest first. Common practice, no source.
 *
 * @example
 * usualRates[0] // => 115_200
 */
export const usualRates: readonly number[] = [
  115_200, 500_000, 250_000, 57_600, 9600, 230_400, 1_000_000, 921_600, 460_800, 38_400, 19_200,
  2_000_000,
];
