import { openQueue } from '../queue/openQueue.js';
import { statusLines } from '../queueWords.js';
import type { Output } from './output.js';
import { queueOf, type RedisOptions } from './redisOptions.js';

/** Prints how much waits. */
export async function tellStatus(
  options: RedisOptions & { readonly json?: true },
  { env, print }: Output,
): Promise<number> {
  const queue = await openQueue(queueOf(options, env));
  try {
    const status = await queue.status();
    print(options.json ? `${JSON.stringify(status)}\n` : `${statusLines(status).join('\n')}\n`);
    return 0;
  } finally {
    await queue.close();
  }
}
