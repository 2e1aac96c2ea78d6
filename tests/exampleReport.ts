import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { scoreSweep } from '@truesweep/core';
import { type Job, jobCriteria, jobExpectation, jobRecorder, readJob } from '@truesweep/jobs';
import { readDelimited } from '@truesweep/recordings';
import type { Report, ReportRecording } from '@truesweep/report';

const example = (name: string) => new URL(`../examples/${name}`, import.meta.url);

/** The demo's job. */
export function exampleJob(): Job {
  return readJob(
    readFileSync(example('outboard-sensor.job.json'), 'utf8'),
    'outboard-sensor.job.json',
  );
}

/** A report of recordings of the demo. */
export function exampleReport(names: readonly string[], job = exampleJob()): Report {
  const expected = jobExpectation(job);
  const recordings = names.map((name): ReportRecording => {
    const bytes = readFileSync(example(`recordings/${name}`));
    const { sweep } = readDelimited(bytes, { name });
    return {
      name,
      bytes: bytes.length,
      sha256: createHash('sha256').update(bytes).digest('hex'),
      howRead: 'Time from column 1 in s, signal from column 2 in V.',
      sweep,
      score: scoreSweep(sweep, expected, jobRecorder(job), jobCriteria(job)),
    };
  });
  return { job, writtenAt: '2026-05-04T10:00:00Z', recordings };
}
