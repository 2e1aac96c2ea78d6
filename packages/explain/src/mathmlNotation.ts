import type { Notation } from './notation.js';
import { numberAndUnit, writeConstant } from './writeQuantity.js';

const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** A text as HTML takes it. */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => escapes[sign]!);

const row = (parts: string): string => `<mrow>${parts}</mrow>`;
const sign = (text: string): string => `<mo>${text}</mo>`;

/** A symbol with what stands below it. */
export function mathmlSymbol(name: string): string {
  const [letters = '', index] = name.split('_');
  const base = `<mi>${escaped(letters)}</mi>`;
  return index === undefined ? base : `<msub>${base}<mtext>${escaped(index)}</mtext></msub>`;
}

/** A number with its unit, as one row. */
export function mathmlQuantity(text: string): string {
  const [number = '', unit] = numberAndUnit(text);
  const [figures = '', place] = number.split('e');
  const shown = signed(figures) + (place === undefined ? '' : timesTen(place));
  if (unit === undefined) return row(shown);
  const space = unit === '°' ? '' : '<mspace width="0.2em"/>';
  return row(`${shown}${space}<mi mathvariant="normal">${escaped(unit)}</mi>`);
}

const signed = (figures: string): string =>
  figures.startsWith('−') ? `${sign('−')}<mn>${figures.slice(1)}</mn>` : `<mn>${figures}</mn>`;

const timesTen = (place: string): string =>
  `${sign('·')}<msup><mn>10</mn>${row(signed(place))}</msup>`;

/** Formulas as MathML's presentation elements (MathML Core). */
export const mathmlNotation: Notation = {
  number: (value) => mathmlQuantity(writeConstant(value)),
  symbol: mathmlSymbol,
  sum: (parts) =>
    row(
      parts
        .map(({ text, isNegative }, i) =>
          i === 0 && !isNegative ? text : sign(isNegative ? '−' : '+') + text,
        )
        .join(''),
    ),
  product: (parts) => row(parts.join(sign('·'))),
  quotient: (above, below) => `<mfrac>${row(above)}${row(below)}</mfrac>`,
  drawsFractions: true,
  power: (base, exponent) => `<msup>${row(base)}${row(exponent)}</msup>`,
  root: (text) => `<msqrt>${text}</msqrt>`,
  call: (name, parts) =>
    name === 'abs'
      ? row(`${sign('|')}${parts[0]}${sign('|')}`)
      : row(`<mi>${name}</mi>${sign('(')}${parts.join(sign(';'))}${sign(')')}`),
  parentheses: (text) => row(sign('(') + text + sign(')')),
};
