import { InputError } from '@truesweep/core';
import { openQueue, type RecordingQueue } from '../queue/openQueue.js';
import type { ParkedMessage } from '../queue/parkedMessage.js';
import {
  droppedSentence,
  noParkedSentence,
  noSuchParkedSentence,
  parkedLine,
  severalParkedSentence,
  triedAgainSentence,
} from '../queueWords.js';
import type { Output } from './output.js';
import { queueOf, type RedisOptions } from './redisOptions.js';

export interface ParkedOptions extends RedisOptions {
  readonly retry?: readonly string[];
  readonly drop?: readonly string[];
  readonly json?: true;
}

/** Lists what is parked, or puts it back, or drops it. */
export async function mindParked(options: ParkedOptions, { env, print }: Output): Promise<number> {
  const queue = await openQueue(queueOf(options, env));
  try {
    const { retry, drop, json } = options;
    if (retry) print(`${triedAgainSentence(await each(queue, retry, queue.retry))}\n`);
    if (drop) print(`${droppedSentence(await each(queue, drop, queue.drop))}\n`);
    if (retry || drop) return 0;
    let isAny = false;
    for await (const parked of queue.parked()) {
      isAny = true;
      print(`${json ? JSON.stringify(parked) : parkedLine(parked)}\n`);
    }
    if (!isAny && !json) print(`${noParkedSentence}\n`);
    return 0;
  } finally {
    await queue.close();
  }
}

/** Does the same to each parked message that is meant, and tells to how many. */
async function each(
  queue: RecordingQueue,
  wanted: readonly string[],
  work: (id: string) => Promise<boolean>,
): Promise<number> {
  const all: ParkedMessage[] = [];
  for await (const parked of queue.parked()) all.push(parked);
  const ids = new Set(
    wanted.flatMap((begin) => {
      const meant = begin === 'all' ? all : all.filter(({ id }) => id.startsWith(begin));
      if (begin !== 'all' && meant.length !== 1) {
        const sentence = meant.length === 0 ? noSuchParkedSentence : severalParkedSentence;
        throw new InputError('unknown-name', 'id', sentence(begin));
      }
      return meant.map(({ id }) => id);
    }),
  );
  let count = 0;
  for (const id of ids) if (await work(id)) count += 1;
  return count;
}
