/** Starts the worker in which recordings are read, judged, drawn and watched. */
export function startWorker(): Worker {
  return new Worker(new URL('./checkSweep.worker.ts', import.meta.url), { type: 'module' });
}
