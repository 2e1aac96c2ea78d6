import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';

const program = join(import.meta.dirname, '../../packages/queue/dist/truesweepQueue.js');

/** What was started and has not ended. */
const running = new Set<ChildProcess>();

/** A run of the command. */
export interface QueueRun {
  readonly child: ChildProcess;
  /** What it printed so far. */
  readonly said: { out: string; err: string };
  /** Its exit code, or the signal that ended it. */
  readonly ended: Promise<number | NodeJS.Signals | null>;
}

/** What a run is given besides its words. */
export interface RunSettings {
  readonly env?: NodeJS.ProcessEnv;
  /** Words before the program, such as a shell with a limit. */
  readonly under?: readonly string[];
  readonly uid?: number;
}

/** Starts the built command. */
export function startQueue(
  args: readonly string[],
  { env = {}, under = [], uid }: RunSettings = {},
): QueueRun {
  const [command = '', ...words] = [...under, process.execPath, program, ...args];
  const child = spawn(command, words, {
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
    ...(uid !== undefined && { uid, gid: uid }),
  });
  running.add(child);
  const said = { out: '', err: '' };
  child.stdout?.setEncoding('utf8').on('data', (text) => {
    said.out += text;
  });
  child.stderr?.setEncoding('utf8').on('data', (text) => {
    said.err += text;
  });
  const ended = new Promise<number | NodeJS.Signals | null>((resolve) => {
    child.on('close', (code, signal) => {
      running.delete(child);
      resolve(signal ?? code);
    });
  });
  return { child, said, ended };
}

/** Runs the built command to its end. */
export async function runQueue(args: readonly string[], settings?: RunSettings) {
  const { said, ended } = startQueue(args, settings);
  return { code: await ended, ...said };
}

/** Ends what a test that failed left running; it may stand still. */
export function endAll(): void {
  for (const child of running) child.kill('SIGKILL');
}
