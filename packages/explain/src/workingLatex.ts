import { checkWorking } from './checkWorking.js';
import { latexNotation, latexSymbol } from './latexNotation.js';
import { rulesOf, type Step, type Working } from './working.js';
import { numberAndUnit, writeQuantity } from './writeQuantity.js';
import { comparedTexts, writeResult, writtenLines } from './writtenStep.js';

/**
 * A working as LaTeX source: paragraphs and `align*` (of amsmath), to be put into a document.
 *
 * @throws InputError at `working…` for what is no working.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * workingLatex(explainOperatingPoint(circuit, 0.9)).includes('V = \\frac') // => false
 */
export function workingLatex(working: Working): string {
  checkWorking(working);
  const { title, given, steps, conclusion } = working;
  return [
    `\\paragraph{${prose(title)}}`,
    ...given.map(
      (one) =>
        `$${latexSymbol(one.symbol)} = ${latexQuantity(writeQuantity(one, one.digits, true))}$: ${prose(one.meaning)}\\\\`,
    ),
    '\\begin{enumerate}',
    ...steps.map((step) => `\\item ${stepLatex(step)}`),
    '\\end{enumerate}',
    ...(conclusion === undefined ? [] : [prose(conclusion), '']),
    ...rulesOf(steps).map(({ name, source }) => `${prose(name)}: ${prose(source)}\\\\`),
    '',
  ].join('\n');
}

function stepLatex(step: Step): string {
  const head = `${prose(step.finds)} (${prose(step.rule.name)})`;
  if (step.kind === 'comparison') {
    const [left, right] = comparedTexts(step).map(latexQuantity);
    const relation = { '<': '<', '>': '>', '≤': '\\le', '≥': '\\ge', '≈': '\\approx', '≠': '\\ne' }[
      step.relation
    ];
    return `${head}\n\\[${latexSymbol(step.left.symbol)} ${relation} ${latexSymbol(step.right.symbol)}:\\quad ${left} ${relation} ${right}\\]\n${prose(step.so)}`;
  }
  if (step.kind === 'table') {
    const rows = [
      step.columns.map(prose),
      ...step.rows.map(({ name, cells }) => [
        prose(name),
        ...cells.map((cell) => `$${latexQuantity(writeResult(cell))}$`),
      ]),
    ];
    return `${head}\n\n\\begin{tabular}{l${'r'.repeat(step.columns.length - 1)}}\n${rows.map((row) => row.join(' & ')).join(' \\\\\n')}\n\\end{tabular}`;
  }
  const { symbol, formula, numbers, result } = writtenLines(step, latexNotation, latexQuantity);
  const lines = [formula, ...(numbers === undefined ? [] : [numbers]), result];
  return `${head}\n\\begin{align*}\n${lines.map((line, i) => `${i === 0 ? symbol : ''} &= ${line}`).join(' \\\\\n')}\n\\end{align*}`;
}

const units: Readonly<Record<string, string>> = {
  Ω: '\\Omega ',
  µ: '\\mu ',
  '°': '{}^\\circ ',
  '²': '^2',
};

function latexQuantity(text: string): string {
  const [number = '', unit] = numberAndUnit(text);
  const shown = number
    .replace('−', '-')
    .replace(/e(.+)$/, (_, place: string) => `\\cdot 10^{${place.replace('−', '-')}}`);
  if (unit === undefined) return shown;
  if (unit === '%') return `${shown}\\,\\%`;
  return `${shown}\\,\\mathrm{${unit.replace(/[Ωµ°²]/g, (letter) => units[letter]!)}}`;
}

/** Prose with what LaTeX takes for commands escaped. */
function prose(text: string): string {
  return text
    .replace(/[\\{}]/g, '')
    .replace(/[%&#_$]/g, (sign) => `\\${sign}`)
    .replace(/[~^]/g, (sign) => `\\${sign}{}`)
    .replace(/[Ω°µ−²³₁·√≤≥Δσ×τπλθφ]/g, (letter) => `\\ensuremath{${signs[letter]}}`);
}

const signs: Readonly<Record<string, string>> = {
  Ω: '\\Omega',
  '°': '^\\circ',
  µ: '\\mu',
  '−': '-',
  '²': '^2',
  '³': '^3',
  '₁': '_1',
  '·': '\\cdot',
  '√': '\\surd',
  '≤': '\\le',
  '≥': '\\ge',
  Δ: '\\Delta',
  σ: '\\sigma',
  '×': '\\times',
  τ: '\\tau',
  π: '\\pi',
  λ: '\\lambda',
  θ: '\\theta',
  φ: '\\varphi',
};
