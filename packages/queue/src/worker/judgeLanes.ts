import { type ChildProcess, fork } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { JudgeSettings, JudgeTask, TaskOutcome, ToProcess } from './judgeTask.js';

/** How a judging process ended with what it judged: by itself or somebody else, for want of memory, for want of time, or because the worker ends. */
export interface LaneEnd {
  readonly kind: 'ended';
  readonly why: 'crash' | 'memory' | 'time' | 'stop';
  /** The signal or the exit code. */
  readonly how: string;
}

/** Judges messages, several at once, each in a process of its own. */
export interface JudgeLanes {
  readonly judge: (task: JudgeTask) => Promise<TaskOutcome | LaneEnd>;
  /** Ends all processes, whatever they do. */
  readonly end: () => Promise<void>;
}

/** How lanes are made. */
export interface LaneSettings extends JudgeSettings {
  /** Memory of a process, MB. */
  readonly memory: number;
  /** How long a judgement may take, s. */
  readonly longest: number;
}

/** What the engine says where it gets no more memory. */
const noMemory = /heap out of memory|Array buffer allocation failed|ERR_WORKER_OUT_OF_MEMORY/i;

interface Lane {
  readonly process: ChildProcess;
  why?: LaneEnd['why'];
  done?: (end: TaskOutcome | LaneEnd) => void;
}

/**
 * Processes that are kept from one message to the next. The worker's own thread stays free meanwhile, so that what it has is told to Redis as held however long a
 * judgement computes; and what ends a process costs one message a try, nothing else.
 */
export function judgeLanes({ memory, longest, ...settings }: LaneSettings): JudgeLanes {
  const idle: Lane[] = [];
  const lanes = new Set<Lane>();
  let isEnding = false;
  // Beside this file where it is built; where sources run, what is built is taken.
  const beside = fileURLToPath(new URL('./judgeProcess.js', import.meta.url));
  const program = existsSync(beside)
    ? beside
    : fileURLToPath(new URL('../../dist/judgeProcess.js', import.meta.url));

  const start = (): Lane => {
    const { TRUESWEEP_REDIS_PASSWORD: _, TRUESWEEP_REDIS_USER: __, ...env } = process.env;
    const child = fork(program, {
      execArgv: [`--max-old-space-size=${memory}`],
      env,
      serialization: 'advanced',
      stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
    });
    const lane: Lane = { process: child };
    lanes.add(lane);
    let last = '';
    child.stderr?.setEncoding('utf8').on('data', (text: string) => {
      last = (last + text).slice(-4000);
    });
    child.on('message', (outcome: TaskOutcome) => {
      const { done } = lane;
      delete lane.done;
      idle.push(lane);
      done?.(outcome);
    });
    const leave = (how: string): void => {
      if (!lanes.delete(lane)) return;
      if (idle.includes(lane)) idle.splice(idle.indexOf(lane), 1);
      const why = lane.why ?? (isEnding ? 'stop' : noMemory.test(last) ? 'memory' : 'crash');
      lane.done?.({ kind: 'ended', why, how });
    };
    child.on('error', ({ message }) => leave(message));
    // Not at `exit`: what it said last may still come.
    child.on('close', (code, signal) => leave(signal ?? `exit code ${code}`));
    post(lane, { kind: 'open', settings });
    return lane;
  };

  return {
    judge: (task) =>
      new Promise((resolve) => {
        const lane = idle.pop() ?? start();
        const timer = setTimeout(() => {
          lane.why = 'time';
          lane.process.kill('SIGKILL');
        }, 1000 * longest);
        lane.done = (outcome) => {
          clearTimeout(timer);
          resolve(outcome);
        };
        post(lane, { kind: 'judge', task });
      }),
    async end() {
      isEnding = true;
      const ended = [...lanes].map(
        ({ process: child }) => new Promise((resolve) => child.once('close', resolve)),
      );
      for (const { process: child } of lanes) child.kill('SIGKILL');
      await Promise.all(ended);
    },
  };
}

/** Where it is gone already its end is told. */
function post({ process: child }: Lane, told: ToProcess): void {
  child.send(told, () => {});
}
