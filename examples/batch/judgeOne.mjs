// A worker of judgeMany.mjs: it reads and judges the recordings it is told, one after the other.
import { parentPort, workerData } from 'node:worker_threads';
import { judgeOne, loadJob } from '@truesweep/jobs/node';

const job = await loadJob(workerData.jobPath);

parentPort?.on('message', async (file) => parentPort?.postMessage(await judge(file)));

/** @param {string} file */
async function judge(file) {
  // A wrong file is a result too; anything else is a fault of the program and ends the worker.
  const result = await judgeOne(file, job);
  if ('verdict' in result) return { verdict: result.verdict, cause: result.causes[0]?.cause };
  const { sentence, place } = result.refused;
  return { refused: place ? `${sentence} (line ${place.line})` : sentence };
}
