import { readFileSync } from 'node:fs';
import { InputError } from '@truesweep/core';
import {
  caUnreadableSentence,
  caWithoutTlsSentence,
  noRedisUrlSentence,
  secretInUrlSentence,
} from '../queueWords.js';
import type { RedisPlace } from './redisPlace.js';

const names = { user: 'TRUESWEEP_REDIS_USER', password: 'TRUESWEEP_REDIS_PASSWORD' } as const;

/**
 * The place that a command's options name. User and password come out of the environment alone.
 *
 * @throws InputError for an address that is none or holds a secret, which is not repeated, or a file of certificates that can't be read.
 */
export function redisPlaceOf(
  { redis, redisCa }: { readonly redis: string; readonly redisCa?: string | undefined },
  env: NodeJS.ProcessEnv,
): RedisPlace {
  const option = '--redis';
  if (/^\w+:\/\/[^/]*@/.test(redis)) {
    throw new InputError('unexpected', option, secretInUrlSentence(names.user, names.password));
  }
  const url = URL.canParse(redis) ? new URL(redis) : undefined;
  const database = /^\/?(\d{0,4})$/.exec(url?.pathname ?? '-')?.[1];
  const isRedis = url?.protocol === 'redis:' || url?.protocol === 'rediss:';
  if (!url || !isRedis || database === undefined || url.hostname === '' || url.search || url.hash) {
    throw new InputError('not-a-name', option, noRedisUrlSentence);
  }
  const isTls = url.protocol === 'rediss:';
  if (redisCa !== undefined && !isTls) {
    throw new InputError('unexpected', '--redis-ca', caWithoutTlsSentence);
  }
  const { [names.user]: user, [names.password]: password } = env;
  return {
    host: url.hostname.replace(/^\[(.*)\]$/, '$1'),
    ...(url.port !== '' && { port: Number(url.port) }),
    ...(database !== '' && { database: Number(database) }),
    ...(user && { user }),
    ...(password && { password }),
    ...(isTls && { tls: redisCa === undefined ? {} : { ca: certificatesIn(redisCa) } }),
  };
}

function certificatesIn(path: string): string {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
    throw new InputError('unreadable-file', path, caUnreadableSentence(reason));
  }
  if (text.includes('-----BEGIN CERTIFICATE-----')) return text;
  throw new InputError('unreadable-file', path, caUnreadableSentence('no certificate'));
}
