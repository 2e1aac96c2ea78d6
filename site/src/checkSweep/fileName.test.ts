import { expect, test } from 'vitest';
import { fileName } from './fileName.js';
import { localTime } from './localTime.js';

test.each([
  ['Port engine, spare', '2026-11-30 10:15', '2026-11-30-port-engine-spare-fail'],
  ['../..\\ <b>:?', undefined, 'b-fail'],
  ['', 'yesterday', 'fail'],
  ['Steuerbord «ö» 12', '2026-01-02', '2026-01-02-steuerbord-o-12-fail'],
  ['x'.repeat(90), undefined, `${'x'.repeat(48)}-fail`],
])('%s', (title, at, name) => {
  expect(fileName(title, 'fail', at)).toBe(name);
});

test('the time is that of this place', () => {
  expect(localTime(new Date(2026, 0, 2, 3, 4))).toBe('2026-01-02 03:04');
});
