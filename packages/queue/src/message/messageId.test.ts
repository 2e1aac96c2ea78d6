import { loadJob } from '@truesweep/jobs/node';
import { expect, test } from 'vitest';
import { jobDefinition } from './jobDefinition.js';
import { messageId } from './messageId.js';

const [one, other] = ['ab'.repeat(32), 'cd'.repeat(32)];

test('is that of what is judged: bytes, how they are read, and job', () => {
  const id = (sha256: string, definition: string, readAs?: object) =>
    messageId({ recording: { sha256, ...(readAs && { readAs }) }, definition });
  const ids = [
    id(one, other),
    id(other, other),
    id(one, one),
    id(one, other, { text: { delimiter: ';' } }),
    id(one, other, { text: { delimiter: ',' } }),
  ];
  expect(new Set(ids).size).toBe(ids.length);
  expect(id(one, other, {})).toBe(id(one, other));
});

test('a job is the same definition whatever recordings it lists', async () => {
  const job = await loadJob('examples/outboard-sensor.job.json');
  const listed = { ...job, recordings: [{ file: 'a.csv' }] };
  expect(jobDefinition(listed)).toEqual(jobDefinition(job));
  expect(jobDefinition({ ...job, title: 'Another' }).id).not.toBe(jobDefinition(job).id);
});
