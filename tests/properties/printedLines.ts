import { all, create, type Unit } from 'mathjs';

const math = create(all!, {});

/** The probability that a standard normal variable lies below a value. */
const normal = (z: number): number => (1 + math.erf(z / Math.SQRT2)) / 2;

/** Units as a working prints them, with what mathjs calls them; longer ones first, so that none is read as another's beginning. */
const units: readonly (readonly [string, string])[] = [
  ['°/V', 'deg/V'],
  ['V/°', 'V/deg'],
  ['V/Ω', 'V/ohm'],
  ['Ω/K', 'ohm/K'],
  ['V/K', 'V/K'],
  ['V/s', 'V/s'],
  ['J/(kg·K)', 'J/(kg K)'],
  ['m/s²', 'm/s^2'],
  ['K/m', 'K/m'],
  ['1/Pa', 'Pa^-1'],
  ['1/K', 'K^-1'],
  ['°C', 'K'],
  ['Hz', 'Hz'],
  ['Pa', 'Pa'],
  ['Ω', 'ohm'],
  ['V', 'V'],
  ['A', 'A'],
  ['W', 'W'],
  ['S', 'S'],
  ['s', 's'],
  ['F', 'F'],
  ['K', 'K'],
  ['m', 'm'],
  ['%', ''],
];
const prefixes = 'pnµmkMGT';
const number = String.raw`\d+(?:\.\d+)?(?:e−?\d+)?`;
const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';

const named = new Map(units);
const unitPattern = units.map(([name]) => name.replace(/[()]/g, '\\$&')).join('|');
const quantities = new RegExp(`(${number})\u00a0([${prefixes}]?)(${unitPattern})`, 'g');

/** A printed line, or a printed value, in the spelling of mathjs. */
export function forMathjs(line: string): string {
  return line
    .replace(quantities, (_, value, prefix, unit) => {
      if (unit === '%') return `(${value} * 0.01)`;
      return `(${value} ${prefix.replace('µ', 'u')}${named.get(unit)})`;
    })
    .replace(new RegExp(`(${number})°`, 'g'), '($1 deg)')
    .replace(
      /[⁰¹²³⁴⁵⁶⁷⁸⁹]+/g,
      (power) => `^${[...power].map((one) => raised.indexOf(one)).join('')}`,
    )
    .replace(/\|([^|]*)\|/g, 'abs($1)')
    .replaceAll('−', '-')
    .replaceAll('·', '*')
    .replace(/√(\d+)/g, 'sqrt($1)')
    .replaceAll('√', 'sqrt')
    .replaceAll('ln(', 'log(')
    .replaceAll('Φ(', 'normal(')
    .replaceAll('π', 'pi')
    .replaceAll(';', ',');
}

/** What a printed line comes to: a plain number, or a value in SI units with its dimension. */
export function evaluated(line: string): number | Unit {
  return math.evaluate(forMathjs(line), { normal });
}

/** Whether two values are of the same dimension. */
export function areAlike(one: number | Unit, other: number | Unit): boolean {
  if (typeof one === 'number' || typeof other === 'number') return typeof one === typeof other;
  return one.equalBase(other);
}

/** The number of a value in SI units. */
export const inSi = (value: number | Unit): number =>
  typeof value === 'number' ? value : (value.toSI() as unknown as { value: number }).value;

/** What is left of nothing by rounding, in SI units. */
const nothing = 1e-9;

/** Half a unit of the last digit that a printed value shows, in SI units; a printed zero is one. */
export function halfDigit(printed: string): number {
  if (inSi(evaluated(printed)) === 0) return nothing;
  const [, decimals = '', power = '0'] = /\d+(?:\.(\d+))?(?:e(−?\d+))?/.exec(printed) ?? [];
  const one = printed.replace(new RegExp(number), '1').replace('−', '');
  return (
    (Math.abs(inSi(evaluated(one))) * 10 ** (Number(power.replace('−', '-')) - decimals.length)) / 2
  );
}

/** Of a working's lines the formula in numbers with the printed result below it. */
export function numericLines(lines: readonly string[]): readonly (readonly [string, string])[] {
  return lines.flatMap((line, i) => {
    if (!/^ {4,}= /.test(line)) return [];
    return [[line.replace(/^ *= /, ''), lines[i + 1]!.replace(/^ *\S+ = /, '')] as const];
  });
}
