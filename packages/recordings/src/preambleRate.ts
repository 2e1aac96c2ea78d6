// No figure may follow: of “1,000,000” the first part is no number.
const number = `([0-9]+(?:[.,][0-9]+)?(?:e[+-]?[0-9]+)?)(?![.,]?[0-9])`;
const between = '[^0-9a-z]{0,8}';
const ratePattern = new RegExp(
  String.raw`\b(?:sampl(?:e|es|ing)[ _-]*(?:rate|frequency)|rate)\b(?:[ _-]*\(?([kmg]?(?:hz|s/s|sa/s))\)?)?${between}${number}\s*([kmg]?(?:hz|s/s|sa/s|samples/s))?`,
  'i',
);
const intervalPattern = new RegExp(
  String.raw`\bsampl(?:e|es|ing)[ _-]*(?:interval|period|time)\b(?:[ _-]*[([]([mµμun]?s)[)\]])?${between}${number}\s*([mµμun]?s)?(?![a-z])`,
  'i',
);
/** Powers of ten of a rate's prefixes, which have either case, and of an interval's. */
const ratePowers: Readonly<Record<string, number>> = { k: 3, m: 6, g: 9 };
const intervalPowers: Readonly<Record<string, number>> = { m: -3, µ: -6, μ: -6, u: -6, n: -9 };

/**
 * The sample rate that the lines before the table tell, as a rate (`Sample rate: 10 kHz`) or as an interval
 * (`Sample interval (ms): 0.1`), Hz. A number without its unit counts only after “sample” or “sampling”, as Hz or s; one whose comma
 * can part thousands as well (`1,000 Hz`) doesn't count.
 */
export function preambleRate(lines: readonly string[]): number | undefined {
  for (const line of lines) {
    const found = rateIn(line) ?? intervalIn(line);
    if (found !== undefined) return found;
  }
  return undefined;
}

function rateIn(line: string): number | undefined {
  const [phrase, before, value = '', after] = ratePattern.exec(line) ?? [];
  const unit = before ?? after;
  if (phrase === undefined || (unit === undefined && !/sampl/i.test(phrase))) return undefined;
  return above0(value, ratePowers[unit?.charAt(0).toLowerCase() ?? ''] ?? 0);
}

function intervalIn(line: string): number | undefined {
  const [phrase, before, value = '', after = 's'] = intervalPattern.exec(line) ?? [];
  if (phrase === undefined) return undefined;
  const unit = (before ?? after).toLowerCase();
  const seconds = above0(value, unit === 's' ? 0 : (intervalPowers[unit.charAt(0)] ?? 0));
  return seconds === undefined ? undefined : 1 / seconds;
}

/** A number times a power of ten, where it has one reading and is above 0. */
function above0(text: string, power: number): number | undefined {
  if (/^\d{1,3},\d{3}$/.test(text)) return undefined;
  const [mantissa = '', exponent = '0'] = text.replace(',', '.').toLowerCase().split('e');
  const value = Number(`${mantissa}e${Number(exponent) + power}`);
  return value > 0 ? value : undefined;
}
