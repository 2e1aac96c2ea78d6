/** Round values between two, some three to six of them: steps of 1, 2 or 5 times a power of ten; with as many decimals as they need. */
export function valueTicks(
  low: number,
  high: number,
): { readonly ticks: readonly number[]; readonly decimals: number } {
  const wanted = (high - low) / 6;
  const power = Math.floor(Math.log10(wanted));
  const times = [1, 2, 5, 10].find((one) => one * 10 ** power >= wanted * (1 - 1e-9)) ?? 10;
  const step = times * 10 ** power;
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return {
    ticks: Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step),
    decimals: Math.max(0, -(times === 10 ? power + 1 : power)),
  };
}
