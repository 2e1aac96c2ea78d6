import { expect, test } from 'vitest';
import { dateInName, dateSeconds } from './dates.js';

test.each([
  ['1970-01-01', 0],
  ['2026-05-03', Date.UTC(2026, 4, 3) / 1000],
  ['2026-05-03T14:30', Date.UTC(2026, 4, 3, 14, 30) / 1000],
  [' 2026-05-03 14:30:15 ', Date.UTC(2026, 4, 3, 14, 30, 15) / 1000],
  ['2026-05-03T14:30:15.25Z', Date.UTC(2026, 4, 3, 14, 30, 15) / 1000],
  ['2026-05-03T14:30:15+02:00', Date.UTC(2026, 4, 3, 12, 30, 15) / 1000],
  ['2026-05-03T14:30-0330', Date.UTC(2026, 4, 3, 18, 0) / 1000],
  ['2024-02-29', Date.UTC(2024, 1, 29) / 1000],
])('%s', (text, seconds) => {
  expect(Math.floor(dateSeconds(text)!)).toBe(seconds);
});

test.each([
  '',
  '2026',
  '2026-05',
  '03.05.2026',
  '05/03/2026',
  '2026-02-30',
  '2025-02-29',
  '2026-13-01',
  '1969-12-31',
  '2026-05-03T25:00',
  'May 3, 2026',
])('no date, since it could be another or is none: "%s"', (text) => {
  expect(dateSeconds(text)).toBeUndefined();
});

test('the last date in a name, the file’s before its folders’', () => {
  expect(dateInName('2025-04-01/port 2026-05-03.csv')).toBe('2026-05-03');
  expect(dateInName('season\\2025-04-01\\port.csv')).toBe('2025-04-01');
  expect(dateInName('port-12026-05-031.csv')).toBeUndefined();
  expect(dateInName('port-2026-02-31.csv')).toBeUndefined();
});
