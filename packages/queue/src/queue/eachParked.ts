import { Job, type Queue } from 'bullmq';
import { damagedSentence, takenOverTooOftenSentence } from '../queueWords.js';
import type { ParkedMessage } from './parkedMessage.js';

/** So many are asked for at a time. */
const page = 500;

/** Parked messages, the oldest first; one whose data is damaged in Redis is told with the others. */
export async function* eachParked(queue: Queue): AsyncGenerator<ParkedMessage> {
  const seen = new Set<string>();
  for (let from = 0; ; from += page) {
    const ids = (await queue.getRanges(['failed'], from, from + page - 1, true)).filter(
      (id) => !seen.has(id),
    );
    if (ids.length === 0) return;
    for (const id of ids) {
      seen.add(id);
      const parked = await parkedOf(queue, id);
      if (parked) yield parked;
    }
  }
}

async function parkedOf(queue: Queue, id: string): Promise<ParkedMessage | undefined> {
  let job: Job | undefined;
  try {
    job = await Job.fromId(queue, id);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return {
      id,
      since: new Date(0).toISOString(),
      attempts: 0,
      file: '?',
      reason: damagedSentence,
    };
  }
  if (!job) return undefined;
  const data: unknown = job.data;
  const { finishedOn = job.timestamp, attemptsMade } = job;
  return {
    id,
    since: new Date(finishedOn).toISOString(),
    attempts: attemptsMade,
    file: fieldOf(data, 'file') ?? '?',
    reason: reasonOf(data, job.failedReason ?? ''),
  };
}

function reasonOf(data: unknown, reason: string): string {
  if (fieldOf(data, 'damaged') !== undefined) return damagedSentence;
  return /stalled more than/.test(reason) ? takenOverTooOftenSentence : reason;
}

function fieldOf(data: unknown, name: string): string | undefined {
  if (typeof data !== 'object' || data === null || !Object.hasOwn(data, name)) return undefined;
  const value = (data as Record<string, unknown>)[name];
  return typeof value === 'string' ? value : undefined;
}
