import { expect, test } from 'vitest';
import { wrapText } from './wrapText.js';

test('a short text stays on one line', () => {
  expect(wrapText('short', '  Next  ', 60)).toEqual(['  Next  short']);
});

test.each([60, 80, 120])(
  'a long text is broken between words at %i, indented, and loses none',
  (width) => {
    const words = Array.from({ length: 60 }, (_, i) => `word${i}`);
    const lines = wrapText(words.join(' '), '  Next  ', width);
    expect(lines.length).toBeGreaterThan(3);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
    for (const line of lines.slice(1)) expect(line).toMatch(/^ {8}\S/);
    expect(lines.map((line) => line.slice(8)).join(' ')).toBe(words.join(' '));
  },
);

test('a word as long as that is left whole', () => {
  expect(wrapText(`a ${'x'.repeat(100)} b`, '', 80)).toEqual(['a', 'x'.repeat(100), 'b']);
});
