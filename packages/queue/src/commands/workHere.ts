import { availableParallelism } from 'node:os';
import { InputError } from '@truesweep/core';
import {
  beganSentence,
  doneSentence,
  endedSentence,
  evictingSentence,
  listeningSentence,
  noAppendOnlySentence,
  outcomeWords,
  parkedSentence,
  redisBackSentence,
  retriedSentence,
  stoppingSentence,
  takenOverSentence,
  twiceSentence,
} from '../queueWords.js';
import { redisLabel } from '../redis/redisPlace.js';
import { kindOfPlace } from '../storage/storagePlace.js';
import {
  type RecordingWorker,
  startWorker,
  type WorkerEvent,
  type WorkerOptions,
} from '../worker/startWorker.js';
import type { Output } from './output.js';
import { bytesOf, secondsOf, wholeOf } from './quantities.js';
import { queueOf, type RedisOptions } from './redisOptions.js';

export interface WorkOptions extends RedisOptions {
  readonly recordings: readonly string[];
  readonly results: string;
  readonly endpoint?: string;
  readonly region?: string;
  readonly lanes?: string;
  readonly memory: string;
  readonly longest: string;
  readonly largest: string;
  readonly takeover: string;
  readonly takeovers: string;
  readonly stopWithin: string;
  readonly listen: string;
  readonly each?: true;
}

/**
 * Judges what comes, until the program is told to end.
 *
 * @returns The exit code.
 * @throws InputError for options that are wrong; RedisFault where Redis refuses at the start.
 */
export async function workHere(options: WorkOptions, output: Output): Promise<number> {
  const { env, tell } = output;
  const { redis, name } = queueOf(options, env);
  const { recordings, results, endpoint, region, listen } = options;
  for (const kind of ['folder', 'bucket'] as const) {
    if (recordings.filter((place) => kindOfPlace(place) === kind).length > 1) {
      throw new InputError('duplicate', '--recordings', twiceSentence('--recordings', kind));
    }
  }
  const seconds = secondsOf(options.stopWithin, '--stop-within');
  const lanes =
    options.lanes === undefined
      ? availableParallelism()
      : wholeOf(options.lanes, '--at-once', 1, 256);
  const end = new AbortController();
  output.onEnd(() => end.abort());
  const settings: WorkerOptions = {
    signal: end.signal,
    redis,
    name,
    recordings,
    results,
    ...(endpoint !== undefined && { endpoint }),
    ...(region !== undefined && { region }),
    lanes,
    memory: Math.max(64, Math.floor(bytesOf(options.memory, '--memory') / 2 ** 20)),
    longest: secondsOf(options.longest, '--longest'),
    largest: bytesOf(options.largest, '--largest'),
    takeover: secondsOf(options.takeover, '--takeover'),
    takeovers: wholeOf(options.takeovers, '--takeovers', 0, 1000),
    ...(listen !== 'none' && { listen }),
    onEvent: (event) => {
      const sentence = sentenceOf(event, options.each === true);
      if (sentence !== undefined) tell(sentence);
    },
  };
  let worker: RecordingWorker;
  try {
    worker = await startWorker(settings);
  } catch (error) {
    if (end.signal.aborted) return 0;
    throw error;
  }
  tell(beganSentence(name, redisLabel(redis), lanes));
  if (worker.address !== undefined) tell(listeningSentence(worker.address));
  if (worker.redisFacts.get('aof_enabled') === '0') tell(noAppendOnlySentence);
  const policy = worker.redisFacts.get('maxmemory_policy') ?? 'noeviction';
  if (policy !== 'noeviction') tell(evictingSentence(policy));
  const ending = new Promise<void>((resolve) => {
    if (end.signal.aborted) resolve();
    end.signal.addEventListener('abort', () => resolve());
  });
  const fault = await Promise.race([ending, worker.failed]);
  tell(stoppingSentence(worker.running(), seconds));
  tell(endedSentence(await worker.stop(seconds)));
  if (fault !== undefined) throw fault;
  return 0;
}

function sentenceOf(event: WorkerEvent, isEach: boolean): string | undefined {
  switch (event.kind) {
    case 'done':
      return isEach
        ? doneSentence(event.file, outcomeWords[event.outcome] ?? event.outcome)
        : undefined;
    case 'parked':
      return parkedSentence(event.file, event.reason);
    case 'retried':
      return retriedSentence(event.file, event.attempt, event.reason);
    case 'taken-over':
      return takenOverSentence(event.id);
    case 'redis-gone':
      return event.reason;
    case 'redis-back':
      return redisBackSentence;
  }
}
