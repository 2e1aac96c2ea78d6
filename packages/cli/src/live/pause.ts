import { setTimeout } from 'node:timers/promises';

/** Waits, but no longer than until it is aborted. */
export async function pause(milliseconds: number, stopped: AbortSignal): Promise<void> {
  await setTimeout(milliseconds, undefined, { signal: stopped }).catch(() => {});
}
