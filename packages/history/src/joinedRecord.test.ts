import { expect, test } from 'vitest';
import type { HistoryRecord } from './historyRecord.js';
import { joinedRecord } from './joinedRecord.js';

const one: HistoryRecord = {
  kind: 'truesweep-record',
  form: 1,
  sensor: 'Port engine',
  recording: 'a'.repeat(64),
  date: '2026-05-03',
  dateFrom: 'told',
  file: 'port.csv',
  note: 'after the winter',
  version: '0.9.1',
  verdict: 'pass',
  noise: 0.001,
  visible: 0.02,
  roughness: 0,
  findings: 0,
  recorder: { interval: 0.001, resolution: 0.001 },
};

test('a later judgement takes the place of the earlier, with the date and the note that it lacks', () => {
  const { date: _, dateFrom: __, note: ___, ...bare } = one;
  const later = { ...bare, verdict: 'marginal' } as const;
  expect(joinedRecord(one, later)).toEqual({ ...one, verdict: 'marginal' });
  const guessed = { ...later, date: '2024-01-01', dateFrom: 'file-name' } as const;
  expect(joinedRecord(one, guessed)).toMatchObject({ date: '2026-05-03', dateFrom: 'told' });
  expect(joinedRecord(guessed, one)).toMatchObject({ date: '2026-05-03', dateFrom: 'told' });
});

test.each([
  ['0.9.1', '0.9.0', true],
  ['0.10.0', '0.9.9', true],
  ['1.0.0', '0.10.2', true],
  ['0.9.0', '0.10.0', false],
  ['0.9.1', '0.9.1', false],
])('%s before %s: the older judgement is left out (%s)', (there, later, isLeftOut) => {
  const before = { ...one, version: there };
  const after = { ...one, version: later, verdict: 'fail' } as const;
  expect(joinedRecord(before, after) === before).toBe(isLeftOut);
});

test('the same once more, in whatever order its fields stand, is the one that was there', () => {
  expect(joinedRecord(one, { ...one })).toBe(one);
  const turned = Object.fromEntries(Object.entries(one).toReversed()) as unknown as HistoryRecord;
  expect(joinedRecord(one, turned)).toBe(one);
});
