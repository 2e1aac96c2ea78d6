import type { Redis } from 'ioredis';
import { keyPrefix } from '../queue/queueKeys.js';

/** So much of damaged data is kept for who looks after the queue; characters. */
const kept = 500;

/**
 * Makes data of a message that is no JSON, and so stops each worker before it can say why, into some that is: no message either, but one that is parked. All else stays as
 * it is.
 *
 * @returns Whether it was damaged.
 */
export async function mendDamaged(client: Redis, queue: string, id: string): Promise<boolean> {
  const key = `${keyPrefix}:${queue}:${id}`;
  const data = await client.hget(key, 'data');
  if (data === null) return false;
  try {
    JSON.parse(data);
    return false;
  } catch {
    await client.hset(key, 'data', JSON.stringify({ damaged: data.slice(0, kept) }));
    return true;
  }
}
