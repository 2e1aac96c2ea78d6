import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freePort } from './freePort.js';
import { redisProgram } from './redisProgram.js';

/** A Redis of the test's own. */
export interface RedisServer {
  readonly port: number;
  readonly address: string;
  /** Ends it as a loss of power would, as far as a process can. */
  readonly kill: () => Promise<void>;
  /** Starts it anew on what it kept. */
  readonly start: () => Promise<void>;
  readonly pid: () => number;
  /** Ends it and removes what it kept. */
  readonly remove: () => Promise<void>;
}

export interface RedisSettings {
  /** What stands before all options, such as its configuration. */
  readonly before?: readonly string[];
  /** More of its options, a list of words. */
  readonly more?: readonly string[];
  /** Whether it takes encrypted connections only. */
  readonly isTls?: boolean;
}

/** Starts a Redis on a free port of 127.0.0.1 that keeps each write on the disk before it answers (`appendfsync always`). */
export async function redisServer({
  before = [],
  more = [],
  isTls = false,
}: RedisSettings = {}): Promise<RedisServer> {
  const program = redisProgram();
  if ('why' in program) throw new Error(program.why);
  const folder = mkdtempSync(join(tmpdir(), 'truesweep-redis-'));
  const port = await freePort();
  let child: ChildProcess | undefined;
  const start = async (): Promise<void> => {
    const ports = isTls ? ['--port', '0', '--tls-port', String(port)] : ['--port', String(port)];
    child = spawn(
      program.command,
      [
        ...before,
        ...ports,
        ...['--bind', '127.0.0.1', '--dir', folder, '--save', '', '--appendonly', 'yes'],
        ...['--appendfsync', 'always', ...more],
      ],
      { env: program.env, stdio: ['ignore', 'pipe', 'inherit'] },
    );
    const begun = child;
    await new Promise<void>((resolve, reject) => {
      let said = '';
      begun.stdout?.setEncoding('utf8').on('data', (text: string) => {
        said += text;
        if (said.includes('Ready to accept connections')) resolve();
      });
      begun.once('exit', () => reject(new Error(`Redis ended:\n${said}`)));
    });
  };
  const kill = async (): Promise<void> => {
    if (!child || child.exitCode !== null || child.signalCode !== null) return;
    const ended = once(child, 'exit');
    child.kill('SIGKILL');
    await ended;
  };
  await start();
  return {
    port,
    address: `${isTls ? 'rediss' : 'redis'}://127.0.0.1:${port}`,
    kill,
    start,
    pid: () => child?.pid ?? 0,
    async remove() {
      await kill();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
