// Reads and scores the recordings of a folder, one after the other, and does nothing else: what a batch is measured against.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { scoreSweep } from '@truesweep/core';
import { jobCriteria, jobExpectation, readJobRecording } from '@truesweep/jobs';
import { loadJob } from '@truesweep/jobs/node';

const [jobPath = '', folder = ''] = process.argv.slice(2);
const job = await loadJob(jobPath);
const expected = jobExpectation(job);
const criteria = jobCriteria(job);
for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
  if (!name.endsWith('.csv')) continue;
  const bytes = readFileSync(join(folder, name));
  const { sweep, recorder } = readJobRecording(bytes, { file: name }, job);
  scoreSweep(sweep, expected, recorder, criteria);
}
