import { type Notation, sumOnLine } from './notation.js';
import { writeConstant } from './writeQuantity.js';

const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** Formulas as plain text, for a terminal; numbers with a true minus sign. */
export const textNotation: Notation = {
  number: writeConstant,
  symbol: (name) => name,
  sum: sumOnLine('−'),
  product: (parts) => parts.join(' · '),
  quotient: (above, below) => `${above} / ${below}`,
  drawsFractions: false,
  power: (base, exponent) =>
    /^\d+$/.test(exponent)
      ? base + [...exponent].map((digit) => raised[Number(digit)]).join('')
      : `${base}^${/^[\p{L}_]+$/u.test(exponent) ? exponent : `(${exponent})`}`,
  root: (text) => (/^[\p{L}\d_]+$/u.test(text) ? `√${text}` : `√(${text})`),
  call: (name, parts) => (name === 'abs' ? `|${parts[0]}|` : `${name}(${parts.join('; ')})`),
  parentheses: (text) => `(${text})`,
};
