import { readFileSync } from 'node:fs';
import { scoreSweep } from '@truesweep/core';
import { jobCriteria, jobExpectation, jobRecorder, readJob } from '@truesweep/jobs';
import { readDelimited } from '@truesweep/recordings';
import { expect, test } from 'vitest';
import { galleryExamples } from './galleryExamples.js';
import { galleryJob, galleryRecording, writtenRecording } from './galleryRecording.js';

const text = readFileSync(
  new URL('../../../examples/outboard-sensor.job.json', import.meta.url),
  'utf8',
);
const demo = readJob(text, 'job');

test.each(galleryExamples)('$slug is judged as the page says: $verdict', ({ slug, verdict }) => {
  const recording = galleryRecording(slug);
  expect(recording, slug).toBeDefined();
  const { sweep } = readDelimited(writtenRecording(recording!), { name: `${slug}.csv` });
  const job = galleryJob(demo, slug);
  const score = scoreSweep(sweep, jobExpectation(job), jobRecorder(job), jobCriteria(job));
  expect(
    score.verdict,
    JSON.stringify([
      score.causes,
      score.findings.map(({ kind, went, depth }) => [kind, went, depth]),
    ]),
  ).toBe(verdict);
});

test('every recording has an example, and every example a text of its own', () => {
  const slugs = galleryExamples.map(({ slug }) => slug);
  expect(new Set(slugs).size).toBe(slugs.length);
  expect(galleryRecording('none')).toBeUndefined();
  for (const { sees, means, proof } of galleryExamples)
    for (const sentence of [sees, means, proof]) expect(sentence).toMatch(/^[A-Z].*\.$/);
});
