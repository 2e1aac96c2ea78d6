import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { controllerTools } from './tools.js';

export const programFolder = fileURLToPath(
  new URL('../../examples/microcontroller/', import.meta.url),
);

export interface ProgramOptions {
  /** Stamp of the first pair, µs, from 0 to 2³² − 1. */
  readonly firstStamp?: number;
  /** Of the serial line. */
  readonly baud?: number;
}

/** Makes a file of a program, such as `core8.elf`, in a folder, as its Makefile says; returns its path. */
export function compileProgram(
  file: string,
  folder: string,
  { firstStamp = 0, baud = 500_000 }: ProgramOptions = {},
): string {
  const tools = controllerTools();
  if ('why' in tools) throw new Error(tools.why);
  const target = join(folder, file);
  runTool('make', [
    '-C',
    programFolder,
    target,
    `BUILD=${folder}`,
    `FIRST_STAMP=${firstStamp}`,
    `BAUD=${baud}`,
  ]);
  return target;
}

/** Runs one of the tools with what it is to read; returns what it printed. */
export function runTool(command: string, args: readonly string[], input?: Uint8Array): Buffer {
  const tools = controllerTools();
  const { status, stdout, stderr, error } = spawnSync(command, args, {
    env: 'why' in tools ? process.env : tools.env,
    input: input ?? '',
    maxBuffer: 1 << 28,
  });
  if (status !== 0) throw new Error(`${command}: ${error?.message ?? stderr.toString()}`);
  return stdout;
}
