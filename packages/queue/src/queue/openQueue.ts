import { isInputError } from '@truesweep/core';
import type { Job } from '@truesweep/jobs';
import { Queue } from 'bullmq';
import { type JobDefinition, jobDefinition } from '../message/jobDefinition.js';
import type { Message } from '../message/message.js';
import { messageId } from '../message/messageId.js';
import { readMessage } from '../message/readMessage.js';
import { greetRedis, hastyRedis, told } from '../redis/openRedis.js';
import { RedisFault, redisFaultOf } from '../redis/redisFault.js';
import { type RedisPlace, redisLabel } from '../redis/redisPlace.js';
import { countsOf } from './countsOf.js';
import { eachParked } from './eachParked.js';
import type { ParkedMessage } from './parkedMessage.js';
import { definitionsKey, keyPrefix, usualQueue } from './queueKeys.js';

/** How a queue is opened. */
export interface QueueOptions {
  /** Where Redis is. */
  readonly redis: RedisPlace;
  /** The queue's name: letters, digits and hyphens; `recordings` when left out. */
  readonly name?: string;
  /** So often a recording is tried while something may pass, a count from 1; 12 when left out, which is more than an hour. */
  readonly tries?: number;
  /** The pause after the first try that failed, s, above 0; 1 s when left out. Each further one is twice as long, up to half of it by chance. */
  readonly pause?: number;
}

/** A recording to be judged. */
export type PutRecording = Omit<Message, 'version' | 'definition'>;

/** What became of a recording that was put: it is new to the queue, waits or is judged already, or is parked. */
export type PutOutcome = 'added' | 'waiting' | 'parked';

/** How much is in a queue. */
export interface QueueCounts {
  /** Messages that wait for a worker: a count, 0 or more. */
  readonly waiting: number;
  /** Messages that a worker has: a count, 0 or more. */
  readonly judged: number;
  /** Messages that wait for another try: a count, 0 or more. */
  readonly delayed: number;
  /** Messages that are parked: a count, 0 or more. */
  readonly parked: number;
}

/** A queue with what Redis tells of itself. */
export interface QueueStatus extends QueueCounts {
  /** Memory that Redis holds for all that it has, bytes, 0 or more. */
  readonly memoryBytes: number;
  /** Whether Redis keeps what waits in a file. */
  readonly isAppendOnly: boolean;
}

/** A queue of recordings, for who fills it and who looks after it. */
export interface RecordingQueue {
  /**
   * Puts a recording. Once this returns, Redis has it, as durably as it keeps anything; the same twice is there once.
   *
   * @throws InputError for what is no message, or a wrong job; RedisFault.
   */
  readonly put: (recording: PutRecording, job: Job) => Promise<PutOutcome>;
  /** Messages that could not be judged, the oldest first. */
  readonly parked: () => AsyncGenerator<ParkedMessage>;
  /** Puts a parked message back; false where there is none of this id. */
  readonly retry: (id: string) => Promise<boolean>;
  /** Forgets a parked message; false where there is none of this id. */
  readonly drop: (id: string) => Promise<boolean>;
  /** How much is in it. */
  readonly status: () => Promise<QueueStatus>;
  /** Lets go of Redis. */
  readonly close: () => Promise<void>;
}

/**
 * Opens a queue.
 *
 * @throws RedisFault where Redis is not reachable, or refuses user, password or certificate.
 *
 * @example
 * const redis = { host: '127.0.0.1', port: 1, password: 'unguessed' };
 * const fault = await openQueue({ redis }).catch((error) => error);
 * fault.code // => 'unreachable'
 * fault.message // => 'Redis at redis://127.0.0.1:1 is not reachable (ECONNREFUSED).'
 */
export async function openQueue(options: QueueOptions): Promise<RecordingQueue> {
  const { redis, name = usualQueue, tries = 12, pause = 1 } = options;
  await greetRedis(redis);
  const client = hastyRedis(redis);
  const queue = new Queue(name, {
    connection: client as never,
    prefix: keyPrefix,
    defaultJobOptions: {
      attempts: tries,
      backoff: { type: 'exponential', delay: 1000 * pause, jitter: 0.5 },
      removeOnComplete: true,
      // A reason is a sentence; where in the program it was found helps nobody who reads it.
      stackTraceLimit: 0,
    },
  });
  queue.on('error', () => {});
  const attempt = async <Result>(work: () => Promise<Result>): Promise<Result> => {
    try {
      return await work();
    } catch (error) {
      if (!isOfConnection(error)) throw error;
      throw redisFaultOf(redisLabel(redis), error);
    }
  };
  const definitions = new WeakMap<Job, Promise<JobDefinition>>();
  const define = (job: Job): Promise<JobDefinition> => {
    const known = definitions.get(job) ?? keepDefinition(job);
    definitions.set(job, known);
    known.catch(() => definitions.delete(job));
    return known;
  };
  const keepDefinition = async (job: Job): Promise<JobDefinition> => {
    const definition = jobDefinition(job);
    await client.hset(definitionsKey(name), definition.id, definition.text);
    return definition;
  };
  const parkedJob = async (id: string) => {
    const isParked = (await queue.getJobState(id)) === 'failed';
    return isParked ? await queue.getJob(id) : undefined;
  };

  const underWay = new Map<string, Promise<PutOutcome>>();
  const added = async (id: string, message: Message): Promise<PutOutcome> => {
    const state = await queue.getJobState(id);
    if (state === 'failed') return 'parked';
    if (state !== 'unknown' && state !== 'completed') return 'waiting';
    await queue.add('judge', message, { jobId: id });
    return 'added';
  };

  return {
    put: (recording, job) =>
      attempt(async () => {
        const definition = await define(job);
        const message = readMessage({ version: 1, ...recording, definition: definition.id });
        const id = messageId(message);
        // Of the same put at once one is new.
        while (underWay.has(id)) await underWay.get(id)?.catch(() => {});
        const work = added(id, message);
        underWay.set(id, work);
        return await work.finally(() => underWay.delete(id));
      }),
    parked: () => eachParked(queue),
    retry: (id) =>
      attempt(async () => {
        const job = await parkedJob(id);
        if (!job) return false;
        await job.retry('failed', { resetAttemptsMade: true, resetAttemptsStarted: true });
        return true;
      }),
    drop: (id) =>
      attempt(async () => {
        const job = await parkedJob(id);
        if (!job) return false;
        await job.remove();
        return true;
      }),
    status: () =>
      attempt(async () => {
        const [counts, info] = await Promise.all([countsOf(queue), client.info()]);
        const facts = told(info);
        return {
          ...counts,
          memoryBytes: Number(facts.get('used_memory') ?? 0),
          isAppendOnly: facts.get('aof_enabled') === '1',
        };
      }),
    close: async () => {
      await queue.close().catch(() => {});
      client.disconnect();
    },
  };
}

/** Whether it came out of the client of Redis: not out of the input, nor out of a fault of the program. */
function isOfConnection(error: unknown): boolean {
  const isOther =
    error instanceof RedisFault || error instanceof TypeError || error instanceof SyntaxError;
  return !isOther && !isInputError(error);
}
