// Many recordings of one job on all processors, a line for each in the order they are named, whatever is ready first:
// `node examples/batch/judgeMany.mjs examples/outboard-sensor.job.json examples/recordings/*.csv`
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { loadJob } from '@truesweep/jobs/node';
import { visibleText } from '@truesweep/wording';

const [jobPath, ...files] = process.argv.slice(2);
if (!jobPath || files.length === 0) {
  console.error('Name a job and at least one recording: judgeMany.mjs job.json a.csv b.csv');
  process.exit(2);
}

// A wrong job is told once, not for every recording.
await loadJob(jobPath).catch(({ message }) => {
  console.error(`${jobPath}: ${message}`);
  process.exit(2);
});

/**
 * What a worker answers of a recording: its verdict, or why it could not be judged.
 *
 * @typedef {{ verdict: string, cause?: string } | { refused: string }} Answer
 */

/** @type {(Answer | undefined)[]} */
const answers = files.map(() => undefined);
let next = 0;
let printed = 0;

/** Takes recording after recording until none is left; one that ends the worker is answered too, and another worker goes on. */
function start() {
  if (next >= files.length) return;
  let at = -1;
  const worker = new Worker(new URL('judgeOne.mjs', import.meta.url), { workerData: { jobPath } });
  const give = () => {
    at = next++;
    if (at < files.length) worker.postMessage(files[at]);
    else worker.terminate();
  };
  worker.on('message', (answer) => {
    take(at, answer);
    give();
  });
  worker.on('error', ({ message }) => {
    take(at, { refused: `Its worker ended: ${message}` });
    start();
  });
  give();
}

/**
 * Keeps an answer and prints all those that are next in the order.
 *
 * @param {number} at
 * @param {Answer} answer
 */
function take(at, answer) {
  answers[at] = answer;
  for (let ready = answers[printed]; ready; ready = answers[++printed]) {
    // A name may hold anything: it neither breaks its line nor acts on the terminal.
    console.log(visibleText(`${files[printed]}: ${said(ready)}`));
    if ('refused' in ready) process.exitCode = 2;
  }
}

/** @param {Answer} answer */
function said(answer) {
  if ('refused' in answer) return `not judged. ${answer.refused}`;
  return answer.cause ? `${answer.verdict} (${answer.cause})` : answer.verdict;
}

for (let i = 0; i < Math.min(availableParallelism(), files.length); i++) start();
