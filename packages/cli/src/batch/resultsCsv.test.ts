import { expect, test } from 'vitest';
import { csvHead, csvRow } from './resultsCsv.js';

const result = {
  file: 'a,"b".csv',
  job: '=1+1',
  sensor: '-',
  note: 'two\nlines',
  refused: { code: 'empty-file', path: 'a.csv', sentence: 'It is empty.' },
  version: '0.1.0',
  judgedAt: '2026-05-04T00:00:00.000Z',
};

test('a row has as many fields as the head, and no field is a formula or breaks its row', () => {
  const row = csvRow(result);
  expect(row.startsWith('"a,""b"".csv",,\'-,\'=1+1,not judged,')).toBe(true);
  expect(row).toContain('two\\u000alines');
  expect(row.replace('a,""b""', '').split(',')).toHaveLength(csvHead.split(',').length);
});
