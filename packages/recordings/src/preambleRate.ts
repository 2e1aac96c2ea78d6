const number = `([0-9]+(?:[.,][0-9]+)?(?:e[+-]?[0-9]+)?)`;
const between = `[^0-9a-z]{0,8}`;
const ratePattern = new RegExp(
  String.raw`\b(?:sampl(?:e|es|ing)[ _-]*(?:rate|frequency)|rate)\b(?:[ _-]*\(?([kmg]?(?:hz|s/s|sa/s))\)?)?${between}${number}\s*([kmg]?(?:hz|s/s|sa/s|samples/s))?`,
  'i',
);
const intervalPattern = new RegExp(
  String.raw`\bsampl(?:e|es|ing)[ _-]*(?:interval|period|time)\b(?:[ _-]*[([]([mµμun]?s)[)\]])?${between}${number}\s*([mµμun]?s)?(?![a-z])`,
  'i',
);
const prefixes: Readonly<Record<string, number>> = { k: 3, m: 6, g: 9 };
const parts: Readonly<Record<string, number>> = { m: -3, µ: -6, μ: -6, u: -6, n: -9 };

/**
 * The sample rate that the lines before the table tell, as a rate (`Sample rate: 10 kHz`) or as an interval
 * (`Sample interval (ms): 0.1`), Hz. A number without its unit counts only after “sample” or “sampling”, as Hz or s.
 */
export function preambleRate(lines: readonly string[]): number | undefined {
  for (const line of lines) {
    const rate = ratePattern.exec(line);
    const isSure = rate && (rate[1] ?? rate[3] ?? (/sampl/i.test(rate[0]) || undefined));
    if (rate && isSure) return above0(rate[2]!, prefixes[first(rate[1] ?? rate[3])] ?? 0);
    const interval = intervalPattern.exec(line);
    if (!interval) continue;
    const unit = interval[1] ?? interval[3] ?? 's';
    const seconds = above0(interval[2]!, unit.length > 1 ? (parts[first(unit)] ?? 0) : 0);
    if (seconds !== undefined) return 1 / seconds;
  }
  return undefined;
}

function first(unit: string | undefined): string {
  return (unit ?? '').charAt(0).toLowerCase();
}

function above0(text: string, power: number): number | undefined {
  const value = Number(`${text.replace(',', '.')}${text.includes('e') ? '' : `e${power}`}`);
  const scaled = text.includes('e') ? value * 10 ** power : value;
  return scaled > 0 ? scaled : undefined;
}
