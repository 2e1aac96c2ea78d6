// A worker of judgeMany.mjs: it reads and judges the recordings it is told, one after the other.
import { parentPort, workerData } from 'node:worker_threads';
import { InputError, scoreSweep } from '@truesweep/core';
import { jobCriteria, jobExpectation, readJobRecording } from '@truesweep/jobs';
import { loadJob, readFileBytes } from '@truesweep/jobs/node';

const job = await loadJob(workerData.jobPath);
const expected = jobExpectation(job);
const criteria = jobCriteria(job);

parentPort?.on('message', async (file) => parentPort?.postMessage(await judge(file)));

/** @param {string} file */
async function judge(file) {
  try {
    const { sweep, recorder } = readJobRecording(await readFileBytes(file), { file }, job);
    const { verdict, causes } = scoreSweep(sweep, expected, recorder, criteria);
    return { verdict, cause: causes[0]?.cause };
  } catch (error) {
    // A wrong file is told; anything else is a fault of the program and ends the worker.
    if (!(error instanceof InputError)) throw error;
    const line = error.place ? ` (line ${error.place.line})` : '';
    return { refused: `${error.message}${line}` };
  }
}
