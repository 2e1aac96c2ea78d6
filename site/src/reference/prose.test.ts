import { expect, test } from 'vitest';
import { firstSentenceHtml, proseHtml } from './prose.js';

const hrefOf = (name: string) => (name === 'Circuit' ? '/reference/#Circuit' : undefined);

test('paragraphs, code and links become HTML, and nothing else does', () => {
  expect(
    proseHtml('A {@link Circuit} of `a < b` ohms,\nand {@link hidden}.\n\nMore <b>.', hrefOf),
  ).toBe(
    '<p>A <a href="/reference/#Circuit"><code>Circuit</code></a> of <code>a &lt; b</code> ohms, and <code>hidden</code>.</p><p>More &lt;b&gt;.</p>',
  );
});

test('the first sentence ends where the next begins, not at a number’s point', () => {
  expect(firstSentenceHtml('From 0.5 to 1. Then more.\n\nAnd more.', hrefOf)).toBe(
    'From 0.5 to 1.',
  );
  expect(firstSentenceHtml('No end', hrefOf)).toBe('No end');
});
