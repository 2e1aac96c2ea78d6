import { expect, test } from 'vitest';
import { declarationHtml, exampleHtml } from './code.js';

const hrefOf = (name: string) => (name === 'Ohms' ? '#Ohms' : undefined);

test('types lead to their place, but for what stands in a text or a comment', () => {
  expect(declarationHtml("f(a: Ohms, kind: 'Ohms'): Array<Ohms>", hrefOf)).toBe(
    'f(a: <a href="#Ohms">Ohms</a>, kind: \'Ohms\'): Array&lt;<a href="#Ohms">Ohms</a>&gt;',
  );
  expect(declarationHtml('/**\n * In Ohms,\n * any.\n */\nohms', hrefOf)).toBe(
    '<i>// In Ohms, any.</i>\nohms',
  );
});

test('what an example gives is set apart', () => {
  expect(exampleHtml('f(1) // => 2 < 3')).toBe('f(1) <i>// =&gt; 2 &lt; 3</i>');
});
