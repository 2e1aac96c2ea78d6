import { isIP } from 'node:net';
import { Redis, type RedisOptions } from 'ioredis';
import { redisFaultOf } from './redisFault.js';
import { type RedisPlace, redisLabel } from './redisPlace.js';

/** How long a connection is tried for, ms, and how long after a try that failed the next begins at most. */
const [patience, longestPause] = [5000, 2000];

/** What makes a client of Redis at a place. */
function clientOptions(place: RedisPlace) {
  const { host = '127.0.0.1', port = 6379, database = 0, user, password, tls } = place;
  return {
    host,
    port,
    db: database,
    ...(user !== undefined && { username: user }),
    ...(password !== undefined && { password }),
    ...(tls && { tls: { ...tls, ...(isIP(host) === 0 && { servername: host }) } }),
    connectTimeout: patience,
    keepAlive: 10_000,
    // What was refused is told at once; a socket that lingers keeps the program.
    disconnectTimeout: 200,
    retryStrategy: (times: number): number | null =>
      Math.min(50 * 2 ** Math.min(times, 10), longestPause),
  } satisfies RedisOptions;
}

/** A client of Redis with those that the library makes of it. */
export interface LastingRedis {
  readonly client: Redis;
  /** Lets go of Redis at once, whatever is still asked: it may be gone. */
  readonly end: () => void;
}

/**
 * A client of Redis that waits for it, however long it is gone.
 *
 * @param onFault Told of each fault of the connection.
 */
export function lastingRedis(place: RedisPlace, onFault: (error: unknown) => void): LastingRedis {
  const client = new Redis({ ...clientOptions(place), maxRetriesPerRequest: null });
  client.on('error', onFault);
  const all = [client];
  const duplicate = client.duplicate.bind(client);
  client.duplicate = (override) => {
    const other = duplicate(override);
    all.push(other);
    return other;
  };
  const end = () => {
    for (const one of all) one.disconnect();
  };
  return { client, end };
}

/**
 * A client of Redis that gives a command up where Redis is not there.
 *
 * @param seconds How long a command may take, s.
 */
export function hastyRedis(place: RedisPlace, seconds = 5): Redis {
  const client = new Redis({
    ...clientOptions(place),
    maxRetriesPerRequest: 1,
    commandTimeout: 1000 * seconds,
  });
  // Each command tells its own.
  client.on('error', () => {});
  return client;
}

/**
 * Connects once, to tell at the start what is wrong.
 *
 * @returns What Redis tells of itself, by name.
 * @throws RedisFault
 */
export async function greetRedis(place: RedisPlace): Promise<ReadonlyMap<string, string>> {
  const client = new Redis({
    ...clientOptions(place),
    lazyConnect: true,
    maxRetriesPerRequest: 0,
    enableOfflineQueue: false,
    commandTimeout: patience,
    retryStrategy: () => null,
  });
  // What comes first is the reason; a closed connection is what follows of it.
  let first: unknown;
  client.on('error', (error) => {
    first ??= error;
  });
  try {
    await client.connect();
    return told(await client.info());
  } catch (error) {
    throw redisFaultOf(redisLabel(place), first ?? error);
  } finally {
    client.disconnect();
  }
}

/** The lines of `INFO` by name. */
export function told(info: string): ReadonlyMap<string, string> {
  const pairs = info
    .split('\r\n')
    .map((line) => /^([^#:]+):(.*)$/.exec(line))
    .filter((pair) => pair !== null);
  return new Map(pairs.map(([, name, value]) => [name!, value!]));
}
