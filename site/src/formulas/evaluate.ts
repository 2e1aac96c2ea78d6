const prefixes: Readonly<Record<string, number>> = {
  p: 1e-12,
  n: 1e-9,
  µ: 1e-6,
  m: 1e-3,
  k: 1e3,
  M: 1e6,
};

const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** What stands for what; in the order in which they are put in. */
const spellings: readonly (readonly [RegExp, (...found: readonly string[]) => string])[] = [
  [/(\d[\d.]*)\s%/g, (_, number) => `(${number}*0.01)`],
  [
    /(\d[\d.]*)\s([pnµmkM]?)(?:V|A|Ω|W|S|s|F|Hz)(?![a-z])/g,
    (_, number, prefix = '') => `(${number}*${prefixes[prefix] ?? 1})`,
  ],
  [/(\d[\d.]*)(?:\s°C|°)/g, (_, number) => `(${number})`],
  [
    /[⁰¹²³⁴⁵⁶⁷⁸⁹]+/g,
    (power = '') => `**${[...power].map((digit) => raised.indexOf(digit)).join('')}`,
  ],
  [/·/g, () => '*'],
  [/−/g, () => '-'],
  [/\^/g, () => '**'],
  [/π/g, () => 'Math.PI'],
  [/√/g, () => 'Math.sqrt'],
  [/\bln\b/g, () => 'Math.log'],
  [/⌊(.*?)⌋/g, (_, inner) => `Math.floor(${inner})`],
  [/\|(.*?)\|/g, (_, inner) => `Math.abs(${inner})`],
  [/(?<!\.)\b(sin|cos|exp|round|min)\b/g, (_, name) => `Math.${name}`],
];

/**
 * The value of a line of a calculation as it is printed, in SI units without prefixes.
 *
 * @throws Error for what is no such line.
 */
export function evaluate(line: string): number {
  const code = spellings.reduce((text, [found, put]) => text.replace(found, put), line);
  if (
    /[^\d.+\-*/(), e]/.test(
      code.replace(/Math\.(PI|sqrt|log|floor|abs|sin|cos|exp|round|min)/g, ''),
    )
  )
    throw new Error(`“${line}” reads as “${code}”, which is no calculation.`);
  return Number(new Function(`return ${code};`)());
}
