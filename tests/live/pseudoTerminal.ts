import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { existsSync, rmSync, symlinkSync } from 'node:fs';

/** A serial port whose other end is a test's. */
export interface PseudoTerminal {
  /** The name under which it is opened. */
  readonly path: string;
  /** Sends bytes to whoever has it open; done when they are on the way. */
  readonly write: (bytes: Uint8Array | string) => Promise<void>;
  /** The rate that it was set to, baud. */
  readonly rate: () => number;
  /** Takes it away, as where a plug is pulled. */
  readonly unplug: () => Promise<void>;
}

/** Why there are no pseudo-terminals on this machine, if so: the program `script` of util-linux opens them. */
export function whyNoTerminal(): string | undefined {
  try {
    execFileSync('script', ['--version'], { stdio: 'ignore' });
    execFileSync('stty', ['--version'], { stdio: 'ignore' });
    return undefined;
  } catch {
    return 'script and stty (util-linux, coreutils) are not there';
  }
}

/**
 * Opens a pseudo-terminal.
 *
 * @param path A link to it, under which it comes back after it was unplugged.
 */
export async function pseudoTerminal(path: string): Promise<PseudoTerminal> {
  const holder = spawn('script', ['-qfec', 'stty raw -echo; tty; exec sleep 3600', '/dev/null'], {
    stdio: ['pipe', 'pipe', 'ignore'],
  });
  const device = await deviceOf(holder);
  if (existsSync(path)) rmSync(path);
  symlinkSync(device, path);
  const input = holder.stdin!;
  input.on('error', () => {});
  return {
    path,
    write: (bytes) => new Promise((resolve) => input.write(bytes, () => resolve())),
    rate: () => Number(execFileSync('stty', ['-F', device, 'speed'], { encoding: 'utf8' })),
    unplug: () =>
      new Promise((resolve) => {
        rmSync(path, { force: true });
        holder.once('exit', () => resolve());
        holder.kill('SIGKILL');
      }),
  };
}

function deviceOf(holder: ChildProcess): Promise<string> {
  return new Promise((resolve) => {
    let said = '';
    holder.stdout!.on('data', (bytes) => {
      said += bytes;
      const [device] = /\/dev\/pts\/\d+/.exec(said) ?? [];
      if (device) resolve(device);
    });
  });
}
