import { expect, test } from 'vitest';
import { nearestName } from './nearestName.js';

const known = ['source', 'limiter', 'leads', 'pullDown', 'pullUp'];

test.each([
  ['limitr', 'limiter'],
  ['Limiter', 'limiter'],
  ['pulldown', 'pullDown'],
  ['lead', 'leads'],
  ['voltage', undefined],
  ['', undefined],
])('%s is nearest to %s', (typed, name) => {
  expect(nearestName(typed, known)).toBe(name);
});
