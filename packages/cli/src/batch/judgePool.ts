import { type ChildProcess, fork } from 'node:child_process';
import type { RecordingResult } from '@truesweep/jobs/node';
import type { JudgeTask, ToWorker } from './judgeTask.js';

/** What became of a recording: a result, the key of one that is kept already, or what made the program itself fail. */
export type TaskOutcome =
  | { readonly kind: 'result'; readonly result: RecordingResult }
  | { readonly kind: 'known'; readonly key: string }
  | { readonly kind: 'failed'; readonly fault: string };

/** What a worker says: an outcome, or a question before it judges. */
export type FromWorker = TaskOutcome | { readonly kind: 'isKept'; readonly key: string };

/** Judges recordings, several at once. */
export interface JudgePool {
  /** Judges one, as soon as it is its turn. It is asked whether a key is kept. */
  judge(task: JudgeTask, isKept: (key: string) => boolean): Promise<TaskOutcome>;
  end(): Promise<void>;
}

interface Asked {
  readonly task: JudgeTask;
  readonly isKept: (key: string) => boolean;
  readonly done: (outcome: TaskOutcome) => void;
}

/**
 * Each worker collects its own garbage: the engine's helping threads would take time from the other workers. A process takes such a flag at its start, a
 * thread doesn't.
 */
const engineFlags = ['--single-threaded-gc'];
/** What Node leaves with where it doesn't know a flag. */
const unknownFlagCode = 9;

/**
 * A pool of worker processes that are kept. One that ends while it judges, such as for want of memory, is a fault of that recording alone; another
 * takes its place.
 */
export function judgePool(workers: number): JudgePool {
  const waiting: Asked[] = [];
  const idle: Lane[] = [];
  const lanes = new Set<Lane>();
  let flags = engineFlags;

  interface Lane {
    readonly worker: ChildProcess;
    asked?: Asked | undefined;
  }

  const give = (lane: Lane): void => {
    lane.asked = waiting.shift();
    if (lane.asked) post(lane, { kind: 'judge', task: lane.asked.task });
    else idle.push(lane);
  };
  const take = (lane: Lane, message: FromWorker): void => {
    const { asked } = lane;
    if (!asked) return;
    if (message.kind === 'isKept') {
      post(lane, { kind: 'kept', isKept: asked.isKept(message.key) });
      return;
    }
    give(lane);
    asked.done(message);
  };
  const leave = (lane: Lane, fault: string, isFlagUnknown: boolean): void => {
    if (!lanes.delete(lane)) return;
    if (idle.includes(lane)) idle.splice(idle.indexOf(lane), 1);
    const { asked } = lane;
    if (!asked) return;
    if (isFlagUnknown && flags.length > 0) {
      flags = [];
      waiting.unshift(asked);
    } else asked.done({ kind: 'failed', fault });
    if (waiting.length > 0) start();
  };
  const start = (): void => {
    const worker = fork(new URL('./judgeWorker.js', import.meta.url), {
      execArgv: flags,
      serialization: 'advanced',
      stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
    });
    const lane: Lane = { worker };
    lanes.add(lane);
    worker.on('message', (message: FromWorker) => take(lane, message));
    worker.on('error', ({ message }) => leave(lane, message, false));
    worker.on('exit', (code, signal) =>
      leave(lane, `its worker ended with ${signal ?? code}`, code === unknownFlagCode),
    );
    give(lane);
  };
  // Where it is gone already its end is told.
  const post = ({ worker }: Lane, message: ToWorker): void => {
    worker.send(message, () => {});
  };

  return {
    judge: (task, isKept) =>
      new Promise((done) => {
        waiting.push({ task, isKept, done });
        const lane = idle.pop();
        if (lane) give(lane);
        else if (lanes.size < workers) start();
      }),
    async end() {
      const ended = [...lanes].map(
        ({ worker }) => new Promise((resolve) => worker.once('exit', resolve)),
      );
      for (const { worker } of lanes) worker.kill('SIGKILL');
      await Promise.all(ended);
    },
  };
}
