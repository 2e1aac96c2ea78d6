import type { FromWorker } from './judgePool.js';
import type { ToWorker } from './judgeTask.js';
import { judgeTaskHere } from './judgeTaskHere.js';

// What ends the batch is told to all of its processes; the command decides when this one ends, and without it this one does.
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => {});

const say = (message: FromWorker) => process.send?.(message);
let kept = (_: boolean): void => {};

process.on('message', (message: ToWorker) => {
  if (message.kind === 'kept') return kept(message.isKept);
  const asked = (key: string) =>
    new Promise<boolean>((resolve) => {
      kept = resolve;
      say({ kind: 'isKept', key });
    });
  let key = '';
  judgeTaskHere(message.task, (one) => {
    key = one;
    return asked(one);
  }).then(
    (result) => say(result ? { kind: 'result', result } : { kind: 'known', key }),
    (error: unknown) =>
      say({ kind: 'failed', fault: (error instanceof Error && error.stack) || String(error) }),
  );
});
