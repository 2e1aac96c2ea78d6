import { InputError } from '@truesweep/core';
import { expect, test } from 'vitest';
import { readJob } from './readJob.js';

const text = `{
  "version": 1,
  "title": "Spare",
  "sensor": { "name": "Throttle", "track": "5k" },
  "hookUp": { "source": { "volts": 5 }, "limiter": "1k" },
  "instrument": { "name": "Logger", "inputResistance": "10M" }
}
`;

test('reads the text of a job, with or without a byte order mark', () => {
  expect(readJob(text).hookUp.limiter).toBe(1000);
  expect(readJob(`\uFEFF${text}`).hookUp.limiter).toBe(1000);
});

test.each([
  ['a missing comma', text.replace('"1k" },', '"1k" }'), 6, 3],
  ['an unmarked value', text.replace('"5k"', '5k'), 4, 44],
  ['no text at all', '', 1, 1],
  ['an end too early', text.slice(0, -3), 6, 63],
  ['lines of another system', text.replace('"5k"', '5k').replaceAll('\n', '\r\n'), 4, 44],
])('%s is refused with its place', (_, wrong, line, column) => {
  const refused = () => readJob(wrong, 'spare.json');
  expect(refused).toThrow(InputError);
  expect(refused).toThrow(
    expect.objectContaining({ code: 'not-json', path: 'spare.json', place: { line, column } }),
  );
});

test('a field that stands twice is refused, with its place', () => {
  const twice = text.replace('"limiter": "1k"', '"limiter": "1k", "limiter": "10k"');
  expect(() => readJob(twice, 'spare.json')).toThrow(
    expect.objectContaining({
      code: 'field-twice',
      path: 'spare.json',
      place: { line: 5, column: 58 },
      message: expect.stringContaining('"limiter" stands twice'),
    }),
  );
});

test('a text of 20 MB is read, and refused for what it is where it is wrong', () => {
  const notes = 'n'.repeat(20_000_000);
  const long = text.replace('"version": 1', `"notes": "${notes}", "version": 1`);
  expect(readJob(long).notes).toBe(notes);
  expect(() => readJob(long.replace('nn"', 'nn'))).toThrow(
    expect.objectContaining({ code: 'not-json' }),
  );
});
