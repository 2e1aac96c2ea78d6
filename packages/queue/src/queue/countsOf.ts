import type { Queue } from 'bullmq';
import type { QueueCounts } from './openQueue.js';

/** How much is in a queue. */
export async function countsOf(queue: Queue): Promise<QueueCounts> {
  const counts = await queue.getJobCounts('wait', 'active', 'delayed', 'failed');
  const { wait = 0, active = 0, delayed = 0, failed = 0 } = counts;
  return { waiting: wait, judged: active, delayed, parked: failed };
}
