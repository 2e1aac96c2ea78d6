import { describe, expect, test } from 'vitest';
import { visibleText } from './visibleText.js';

describe('what a terminal or a page would act on', () => {
  test.each([
    ['a clipboard write', '\u001b]52;c;aGk=\u0007', '\\u001b]52;c;aGk=\\u0007'],
    ['a control of one character', 'a\u009b31mb', 'a\\u009b31mb'],
    ['a step back', 'pass\b\b\b\b\u007f', 'pass\\u0008\\u0008\\u0008\\u0008\\u007f'],
    ['lines', 'a\r\nb\tc\u2028d\u2029\u0085', 'a\\u000d\\u000ab\\u0009c\\u2028d\\u2029\\u0085'],
    ['another direction', '\u202egnp.\u2066\u200e\u061c', '\\u202egnp.\\u2066\\u200e\\u061c'],
    ['nothing to see', 'a\u200bb\ufeff\u00ad\u2060', 'a\\u200bb\\ufeff\\u00ad\\u2060'],
    ['half a character', '\ud83d a \udca9', '\\ud83d a \\udca9'],
    ['a hidden tag', '\u{e0041}', '\\udb40\\udc41'],
  ])('%s is shown', (_, text, shown) => {
    expect(visibleText(text)).toBe(shown);
  });
});

test('every character of the controls is shown, alone and with a kept one', () => {
  for (let code = 0; code < 0xa0; code += code === 0x1f ? 0x60 : 1) {
    const shown = visibleText(String.fromCharCode(code));
    expect(shown).toBe(`\\u${code.toString(16).padStart(4, '0')}`);
    expect(JSON.parse(`"${shown}"`)).toBe(String.fromCharCode(code));
  }
  expect(visibleText('a\n\tb\u001b', '\n')).toBe('a\n\\u0009b\\u001b');
});

test('words of any language, units and pictures stay as they are', () => {
  for (const text of ['4.7\u00a0kΩ ± 5\u00a0%', 'Größe', 'שלום', 'می\u200cخواهم', '日本', '👩‍🔧 ⚙️'])
    expect(visibleText(text)).toBe(text);
});
