import { expect, test } from 'vitest';
import { withSupply } from './supplyColumn.js';

const headings = ['time (us)', 'signal (counts)', 'supply (counts)'];

test('a supply that a heading names is read', () => {
  expect(withSupply({}, headings)).toEqual({ text: { supplyColumn: 2 } });
  expect(withSupply({ text: { voltsPerUnit: 0.005 } }, headings)).toEqual({
    text: { voltsPerUnit: 0.005, supplyColumn: 2 },
  });
});

test('what was said stands, and without such a heading nothing changes', () => {
  const said = { text: { supplyColumn: 1 } };
  expect(withSupply(said, headings)).toBe(said);
  const read = {};
  expect(withSupply(read, ['time (us)', 'signal (counts)'])).toBe(read);
});
