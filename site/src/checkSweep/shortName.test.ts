import { expect, test } from 'vitest';
import { shortName } from './shortName.js';

test('a name keeps its begin and its end', () => {
  expect(shortName('x'.repeat(60))).toBe('x'.repeat(60));
  expect(shortName(`port${'x'.repeat(300)}-2026.csv`)).toMatch(/^portx{40}…x{7}-2026\.csv$/);
});
