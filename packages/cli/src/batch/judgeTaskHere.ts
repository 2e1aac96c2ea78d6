import type { Job } from '@truesweep/jobs';
import { readJob } from '@truesweep/jobs';
import { judgeOne, type RecordingResult } from '@truesweep/jobs/node';
import type { JudgeTask } from './judgeTask.js';

/** So many jobs are held. */
const most = 64;
const jobs = new Map<string, Job>();

/** Judges a recording in this thread; nothing where there is a result of it already. */
export async function judgeTaskHere(
  { job: text, ...options }: JudgeTask,
  isKept: (key: string) => boolean | Promise<boolean>,
): Promise<RecordingResult | undefined> {
  const job = jobs.get(text) ?? readJob(text);
  if (jobs.size >= most) jobs.clear();
  jobs.set(text, job);
  return await judgeOne(options.file, job, { ...options, isKept });
}
