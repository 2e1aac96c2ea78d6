import { type Notation, sumOnLine } from './notation.js';
import { writeConstant } from './writeQuantity.js';

const functions: Readonly<Record<string, string>> = {
  ln: '\\ln',
  exp: '\\exp',
  min: '\\min',
  max: '\\max',
  Φ: '\\Phi',
};

const greek: Readonly<Record<string, string>> = {
  Δ: '\\Delta ',
  Ω: '\\Omega ',
  Φ: '\\Phi ',
  α: '\\alpha ',
  θ: '\\theta ',
  λ: '\\lambda ',
  π: '\\pi ',
  σ: '\\sigma ',
  τ: '\\tau ',
  φ: '\\varphi ',
};

/** A symbol's letters and index in LaTeX. */
export function latexSymbol(name: string): string {
  const [letters = '', index] = name.split('_');
  const written = (text: string) =>
    [...text]
      .map((letter) => greek[letter] ?? letter)
      .join('')
      .trim();
  const base = written(letters);
  return index === undefined ? base : `${base}_{\\mathrm{${written(index)}}}`;
}

/** Formulas as LaTeX source for a displayed equation. */
export const latexNotation: Notation = {
  number: (value) => writeConstant(value).replace('π', '\\pi ').replaceAll('−', '-'),
  symbol: latexSymbol,
  sum: sumOnLine('-'),
  product: (parts) => parts.join(' \\cdot '),
  quotient: (above, below) => `\\frac{${above}}{${below}}`,
  drawsFractions: true,
  power: (base, exponent) => `${base}^{${exponent}}`,
  root: (text) => `\\sqrt{${text}}`,
  call: (name, parts) =>
    name === 'abs'
      ? `\\left|${parts[0]}\\right|`
      : `${functions[name] ?? `\\operatorname{${name}}`}\\left(${parts.join(';\\,')}\\right)`,
  parentheses: (text) => `\\left(${text}\\right)`,
};
