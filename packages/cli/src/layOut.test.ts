import { expect, test } from 'vitest';
import { layOut } from './layOut.js';
import { paragraph, table } from './textPart.js';

const plain = { width: 60, colour: false };

test('a table stands in columns where it fits', () => {
  const part = table(['Checks', 'limit'], [['Gaps', '15 ms']], ['left', 'right']);
  expect(layOut([part], plain)).toBe('  Checks  limit\n  Gaps    15 ms\n');
});

test('a table that is too wide becomes a paragraph a row, with the headings before the cells', () => {
  const long = 'a connection that many words are needed for';
  const part = table(
    ['Checks', 'limit', 'outcome'],
    [['Gaps', long, 'fails']],
    ['left', 'left', 'left'],
  );
  expect(layOut([part], plain)).toBe(`  Checks\n    Gaps: limit ${long},\n      outcome fails\n`);
});

test('colour is for the verdict alone, and takes no room', () => {
  const verdict = { ...paragraph('word '.repeat(20).trim(), '  FAIL: '), verdict: 'fail' } as const;
  const coloured = layOut([verdict], { width: 60, colour: true });
  expect(coloured.startsWith('\u001b[1;31m  FAIL: \u001b[0mword')).toBe(true);
  const uncoloured = coloured.replace('\u001b[1;31m', '').replace('\u001b[0m', '');
  expect(uncoloured).toBe(layOut([verdict], plain));
  expect(layOut([paragraph('text')], { width: 60, colour: true })).toBe('text\n');
});
