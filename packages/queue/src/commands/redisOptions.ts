import { InputError } from '@truesweep/core';
import type { Command } from 'commander';
import { usualQueue } from '../queue/queueKeys.js';
import { noQueueNameSentence, queueHelp } from '../queueWords.js';
import type { RedisPlace } from '../redis/redisPlace.js';
import { redisPlaceOf } from '../redis/redisPlaceOf.js';

/** Options by which every command finds the queue. */
export interface RedisOptions {
  readonly redis: string;
  readonly redisCa?: string;
  readonly queue: string;
}

/** Adds the options by which a command finds the queue. */
export function withRedis(command: Command): Command {
  return command
    .option('--redis <address>', queueHelp.redis, 'redis://127.0.0.1:6379')
    .option('--redis-ca <file>', queueHelp.redisCa)
    .option('--queue <name>', queueHelp.queue, usualQueue);
}

/** The queue that a command's options name. */
export function queueOf(
  options: RedisOptions,
  env: NodeJS.ProcessEnv,
): { readonly redis: RedisPlace; readonly name: string } {
  const { queue: name } = options;
  if (!/^[a-z0-9][a-z0-9-]{0,63}$/i.test(name)) {
    throw new InputError('not-a-name', '--queue', noQueueNameSentence);
  }
  return { redis: redisPlaceOf(options, env), name };
}
