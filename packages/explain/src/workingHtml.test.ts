import { expect, test } from 'vitest';
import { quotient, sum } from './expression.js';
import { workingHtml } from './workingHtml.js';
import { workingLatex } from './workingLatex.js';
import { workOut } from './workOut.js';

const evil = '<img src=x onerror="alert(1)"> & {} $ %';
const working = workOut(evil, (sheet) => {
  sheet.give({ symbol: 'E', meaning: evil, value: 5, unit: 'V' });
  sheet.give({ symbol: 'R_t', meaning: 'track', value: 5000, unit: 'Ω' });
  sheet.find({
    symbol: 'I',
    meaning: evil,
    unit: 'A',
    formula: quotient('E', 'R_t'),
    rule: { name: evil, source: evil },
  });
  return { conclusion: evil };
});

test('no text of a working becomes an element', () => {
  const html = workingHtml(working);
  expect(html).not.toContain('<img');
  expect(html).toContain('&lt;img src=x onerror=&quot;alert(1)&quot;&gt; &amp; {}');
});

test('the formula reads as text in the order in which one says it', () => {
  const text = workingHtml(working)
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');
  expect(text).toContain('I = E R t = 5 V 5 kΩ = 1.000 mA');
});

test('no text of a working becomes a command of LaTeX', () => {
  const prose = (text: string) => workingLatex({ ...working, conclusion: text });
  expect(prose('A & {}$ % # _ ~ ^ \\x.')).toContain('A \\& \\$ \\% \\# \\_ \\~{} \\^{} x.');
  expect(workingLatex(working)).not.toContain('{}');
});

test('a working that lacks a part is refused', () => {
  const { given: _, ...rest } = working;
  expect(() => workingHtml(rest as never)).toThrow('working.given is missing');
  expect(() => workingHtml(undefined as never)).toThrow('working is missing');
});

test('sums of a single part are that part', () => {
  expect(sum('E')).toEqual({ symbol: 'E' });
});
