// May this sensor go back? `node examples/scoreRecording.mjs`.
import { readFileSync } from 'node:fs';
import { scoreSweep } from '@truesweep/core';
import { jobCriteria, jobExpectation, jobRecorder, readJob } from '@truesweep/jobs';
import { readDelimited } from '@truesweep/recordings';
import { causeMeanings, verdictMeanings } from '@truesweep/wording';

const here = (/** @type {string} */ name) => readFileSync(new URL(name, import.meta.url));
const job = readJob(here('outboard-sensor.job.json').toString());
const { sweep } = readDelimited(here('recordings/worn.csv'), { name: 'worn.csv' });

const score = scoreSweep(sweep, jobExpectation(job), jobRecorder(job), jobCriteria(job));
console.log(verdictMeanings[score.verdict]);
for (const { cause } of score.causes) console.log(causeMeanings[cause]);
const [first] = score.findings;
if (first) console.log(`First ${first.kind} at ${Math.round(100 * first.travel)} % of travel.`);
