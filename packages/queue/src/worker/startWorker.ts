import { isInputError } from '@truesweep/core';
import { type Job, Queue, UnrecoverableError, WaitingError, Worker } from 'bullmq';
import { metricsText } from '../health/metricsText.js';
import { serveHealth } from '../health/serveHealth.js';
import { workFigures } from '../health/workFigures.js';
import { messageId } from '../message/messageId.js';
import { readMessage } from '../message/readMessage.js';
import { countsOf } from '../queue/countsOf.js';
import { definitionsKey, keyPrefix, usualQueue } from '../queue/queueKeys.js';
import {
  crashedSentence,
  noDefinitionSentence,
  noMessageSentence,
  otherIdSentence,
  outOfMemorySentence,
  stoppedSentence,
  tooLongSentence,
} from '../queueWords.js';
import { greetRedis, hastyRedis, lastingRedis } from '../redis/openRedis.js';
import { RedisFault, redisFaultOf } from '../redis/redisFault.js';
import { type RedisPlace, redisLabel } from '../redis/redisPlace.js';
import { openStorage } from '../storage/storagePlace.js';
import { version } from '../version.js';
import { withoutSecrets } from '../withoutSecrets.js';
import { judgeLanes } from './judgeLanes.js';
import type { JudgeTask, TaskOutcome } from './judgeTask.js';
import { mendDamaged } from './mendDamaged.js';

/** How a worker works. */
export interface WorkerOptions {
  /** Where Redis is. */
  readonly redis: RedisPlace;
  /** The queue's name; `recordings` when left out. */
  readonly name?: string;
  /** Where recordings lie: one folder, one bucket as `s3://bucket/prefix`, or one of each. */
  readonly recordings: readonly string[];
  /** Where results are filed: a folder or a bucket. Its keys stand in the environment (`TRUESWEEP_S3_KEY_ID`, `TRUESWEEP_S3_KEY_SECRET`). */
  readonly results: string;
  /** Where the object store of buckets answers; left out where there are none. */
  readonly endpoint?: string;
  /** The region that requests to it are signed for; `us-east-1` when left out. */
  readonly region?: string;
  /** So many are judged at once: a count, 1 or more. */
  readonly lanes: number;
  /** Memory of a judging process, MB, 64 or more. */
  readonly memory: number;
  /** How long a judgement may take, s, above 0. */
  readonly longest: number;
  /** The largest recording that is read, bytes, 0 or more. */
  readonly largest: number;
  /** A message whose worker has not been heard of for so long is given to another, s, above 0. */
  readonly takeover: number;
  /** So often; then it is parked: a count, 0 or more. */
  readonly takeovers: number;
  /** Address and port of health and figures; left out where they are not told. */
  readonly listen?: string;
  /** Where it aborts while Redis is not reachable at the start, no worker is started; left out where that is waited for without end. */
  readonly signal?: {
    /** Whether it aborted. */
    readonly aborted: boolean;
  };
  /** Told what happens; nobody is when left out. */
  readonly onEvent?: (event: WorkerEvent) => void;
}

/** What a worker tells while it works. */
export type WorkerEvent =
  | {
      /** A recording is done: filed with its verdict, refused, or known. */
      readonly kind: 'done';
      /** What it is filed as. */
      readonly file: string;
      /** Its verdict, `refused` or `known`. */
      readonly outcome: string;
    }
  | {
      /** It is parked, or another try follows. */
      readonly kind: 'parked' | 'retried';
      /** What it is filed as. */
      readonly file: string;
      /** Which try it was: a count from 1. */
      readonly attempt: number;
      /** Why. */
      readonly reason: string;
    }
  | {
      /** Taken over from another worker. */
      readonly kind: 'taken-over';
      /** The message's id. */
      readonly id: string;
    }
  | {
      /** Redis is gone, with the reason; or is back. */
      readonly kind: 'redis-gone' | 'redis-back';
      /** Why; empty where it is back. */
      readonly reason: string;
    };

/** A worker that works. */
export interface RecordingWorker {
  /** Where its health is told; left out where it isn't. */
  readonly address?: string;
  /** What Redis told of itself at the start, by name. */
  readonly redisFacts: ReadonlyMap<string, string>;
  /** Tells an error that it can't go on from, if ever there is one: it takes no more recordings then, and is to be stopped. */
  readonly failed: Promise<unknown>;
  /** How many recordings it has at the moment. */
  readonly running: () => number;
  /**
   * Takes no more, finishes what it has, and lets go of Redis. What is not finished within so many seconds, above 0, is given back. Where Redis is gone, timers of the library
   * keep the process: exit it.
   *
   * @returns What it did since it began: counts.
   */
  readonly stop: (
    seconds: number,
  ) => Promise<{ judged: number; known: number; parked: number; givenBack: number }>;
}

/** So often a message is judged whose process ends; what ends a process once may have been somebody's doing. */
const crashes = 3;

/** Thrown so that another try follows. */
class Passing extends Error {}

/**
 * Starts a worker: it takes messages, judges each in a process of its own, and files what comes of it.
 *
 * @throws InputError for options that are wrong; RedisFault where Redis refuses at the start, or `signal` aborts before it is reachable.
 */
export async function startWorker(options: WorkerOptions): Promise<RecordingWorker> {
  const { redis, name = usualQueue, lanes: count, takeover, takeovers, onEvent } = options;
  const tell = (event: WorkerEvent) => onEvent?.(event);
  // What is wrong with them is told here, not by each process.
  for (const place of options.recordings) openStorage(place, '--recordings', options, process.env);
  openStorage(options.results, '--results', options, process.env);
  const redisFacts = await greeted(redis, options.signal, (reason) =>
    tell({ kind: 'redis-gone', reason }),
  );

  let isGone = false;
  const gone = (error: unknown): void => {
    if (isGone || isStopping) return;
    isGone = true;
    tell({ kind: 'redis-gone', reason: redisFaultOf(redisLabel(redis), error).message });
  };
  const lasting = lastingRedis(redis, gone);
  const { client } = lasting;
  client.on('close', () => gone(Object.assign(new Error(), { code: 'closed' })));
  client.on('ready', () => {
    if (isGone) tell({ kind: 'redis-back', reason: '' });
    isGone = false;
  });
  const asked = hastyRedis(redis, 2);
  const queue = new Queue(name, { connection: asked as never, prefix: keyPrefix });
  queue.on('error', () => {});

  const figures = workFigures();
  const lanes = judgeLanes({
    recordings: options.recordings,
    results: options.results,
    endpoint: options.endpoint,
    region: options.region,
    largest: options.largest,
    memory: options.memory,
    longest: options.longest,
  });
  let running = 0;
  let isStopping = false;

  const taskOf = async ({ id = '', data }: Job): Promise<JudgeTask> => {
    const message = messageIn(data);
    if (messageId(message) !== id) throw new UnrecoverableError(otherIdSentence(id));
    const definition = await client.hget(definitionsKey(name), message.definition);
    if (definition === null) throw new UnrecoverableError(noDefinitionSentence(message.definition));
    return { id, message, definition };
  };
  const judged = async (task: JudgeTask): Promise<TaskOutcome> => {
    for (let tries = 1; ; tries++) {
      const outcome = await lanes.judge(task);
      if (outcome.kind !== 'ended') return outcome;
      const { why, how } = outcome;
      if (why === 'stop') return { kind: 'passing', reason: stoppedSentence };
      if (why === 'memory') return { kind: 'poison', reason: outOfMemorySentence(options.memory) };
      if (why === 'time') return { kind: 'poison', reason: tooLongSentence(options.longest) };
      figures.crashed();
      if (tries === crashes) return { kind: 'poison', reason: crashedSentence(crashes, how) };
    }
  };
  const processed = async (job: Job, token?: string): Promise<void> => {
    const begun = performance.now();
    running += 1;
    try {
      const task = await taskOf(job);
      const outcome = await judged(task);
      switch (outcome.kind) {
        case 'poison':
          throw new UnrecoverableError(outcome.reason);
        case 'passing':
          if (outcome.reason !== stoppedSentence) throw new Passing(outcome.reason);
          figures.givenBack();
          await job.moveToWait(token);
          throw new WaitingError();
        default: {
          const what = outcome.kind === 'filed' ? outcome.outcome : 'known';
          figures.done(what, (performance.now() - begun) / 1000);
          tell({ kind: 'done', file: task.message.file, outcome: what });
        }
      }
    } catch (error) {
      throw asReason(error);
    } finally {
      running -= 1;
    }
  };
  const worker = new Worker(name, processed, {
    connection: client as never,
    prefix: keyPrefix,
    concurrency: count,
    lockDuration: 1000 * takeover,
    stalledInterval: Math.max(50, 500 * takeover),
    maxStalledCount: takeovers,
    removeOnComplete: { count: 0 },
    runRetryDelay: 1000,
    autorun: false,
  });
  worker.on('error', () => {});
  worker.on('stalled', (id) => {
    // Where Redis goes meanwhile, it is mended at the next time.
    mendDamaged(client, name, id).catch(() => {});
    figures.takenOver();
    tell({ kind: 'taken-over', id });
  });
  worker.on('failed', (job, { message: reason }) => {
    const { attemptsMade = 0, finishedOn, data } = job ?? {};
    // It has an end where no other try follows.
    const kind = finishedOn === undefined ? 'retried' : 'parked';
    figures[kind]();
    const file = (data as { file?: unknown } | undefined)?.file;
    tell({ kind, file: typeof file === 'string' ? file : '?', attempt: attemptsMade, reason });
  });

  const health =
    options.listen === undefined
      ? undefined
      : await serveHealth(options.listen, {
          async isReady() {
            if (isStopping) return stoppedSentence;
            return await asked.ping().then(
              () => true as const,
              (error: unknown) => redisFaultOf(redisLabel(redis), error).message,
            );
          },
          async metrics() {
            const counts = await countsOf(queue).catch(() => undefined);
            return metricsText(figures.metrics(counts, running, version));
          },
        }).catch(async (error: unknown) => {
          await worker.close(true);
          await lanes.end();
          lasting.end();
          asked.disconnect();
          throw error;
        });
  // It runs until it is closed; what happens to Redis meanwhile is told by the client.
  let fail = (_: unknown) => {};
  const failed = new Promise<unknown>((resolve) => {
    fail = resolve;
  });
  worker.run().catch((error: unknown) => {
    if (!isStopping) fail(error);
  });

  return {
    ...(health && { address: health.address }),
    redisFacts,
    running: () => running,
    failed,
    async stop(seconds) {
      isStopping = true;
      const closed = worker.close().catch(() => {});
      // Where Redis is gone too, nothing is given back: another worker takes it over.
      await within(seconds, closed);
      await lanes.end();
      await within(2, closed);
      health?.close();
      lasting.end();
      asked.disconnect();
      return figures.counts();
    },
  };
}

/** What Redis tells of itself, as soon as it is reachable: a machine's services begin in any order. */
async function greeted(
  redis: RedisPlace,
  signal: WorkerOptions['signal'],
  onGone: (reason: string) => void,
): Promise<ReadonlyMap<string, string>> {
  for (let tries = 1; ; tries++) {
    try {
      return await greetRedis(redis);
    } catch (error) {
      if (!(error instanceof RedisFault) || error.code === 'refused' || signal?.aborted)
        throw error;
      if (tries === 1) onGone(error.message);
      await new Promise((resolve) => setTimeout(resolve, 500));
    }
  }
}

function messageIn(data: unknown) {
  try {
    return readMessage(data);
  } catch (error) {
    if (!isInputError(error)) throw error;
    throw new UnrecoverableError(noMessageSentence(error.message));
  }
}

/** What is thrown stands in Redis as the reason: in short, and without secrets. */
function asReason(error: unknown): unknown {
  if (!(error instanceof Error) || error instanceof WaitingError) return error;
  error.message = withoutSecrets(error.message, process.env).slice(0, 4000);
  error.stack = '';
  return error;
}

/** Waits for something, but no longer than so many seconds. */
async function within(seconds: number, work: Promise<unknown>): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const passed = new Promise((resolve) => {
    timer = setTimeout(resolve, 1000 * seconds);
  });
  await Promise.race([work, passed]);
  clearTimeout(timer);
}
