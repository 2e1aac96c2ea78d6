import { spawnSync } from 'node:child_process';
import { existsSync, globSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { fetchDebianPackages, isDebian } from '../debianPackages.js';

/** What compiles the controllers' programs, and what runs the 8-bit one without a controller. */
export interface ControllerTools {
  /** In which `make`, both cross compilers and the emulator's library are found. */
  readonly env: NodeJS.ProcessEnv;
  /** What the machine's own compiler needs to link with the emulator. */
  readonly emulatorFlags: readonly string[];
}

export interface NoTools {
  /** Why there are none, for whoever reads that tests were skipped. */
  readonly why: string;
}

const cache = fileURLToPath(new URL('../../node_modules/.cache/truesweep/', import.meta.url));
const folder = join(cache, 'controller-tools');
const failure = join(cache, 'controller-tools-failed.txt');

/** Of what the wanted packages depend on, only this: a machine has the rest, or nothing here needs it. */
const needed =
  /^(make|(gcc|binutils)-(avr|arm-none-eabi)|avr-libc|libsimavr(\d+|-dev)|lib(elf|gmp|isl|mpc|mpfr)\d+(t64)?)$/;
const wanted = ['make', 'gcc-avr', 'avr-libc', 'gcc-arm-none-eabi', 'libsimavr-dev'];

/** Four fifths of what would be unpacked: other languages, other cores, manuals. */
const unneeded = [
  '*/cc1plus',
  '*/lto1',
  '*lto-dump',
  '*/arm-none-eabi/*/thumb',
  '*/arm-none-eabi/*/arm',
  '*/plugin',
  './usr/share',
];

let found: ControllerTools | NoTools | undefined;

/** The tools of this machine, or those fetched before, or fetched now where it is a Debian. */
export function controllerTools(): ControllerTools | NoTools {
  found ??= toolsIn('/usr') ?? toolsIn(join(folder, 'usr')) ?? fetchedTools();
  return found;
}

/** Whether this machine has a C compiler of its own, as the emulator and the tests of the shared code need. */
export const hasHostCompiler = succeeds('cc', ['-E', '-x', 'c', '-'], process.env, '');

function toolsIn(usr: string): ControllerTools | undefined {
  if (!existsSync(usr)) return undefined;
  const isOwn = usr === '/usr';
  const libraries = globSync('lib/*-linux-gnu*/', { cwd: usr }).map((path) => join(usr, path));
  const env = isOwn
    ? process.env
    : {
        ...process.env,
        PATH: [join(usr, 'bin'), process.env.PATH].join(delimiter),
        LD_LIBRARY_PATH: libraries.join(delimiter),
      };
  const headers = `-I${join(usr, 'include/simavr')}`;
  const isWhole =
    succeeds('make', ['--version'], env) &&
    succeeds('arm-none-eabi-gcc', ['-c', '-x', 'c', '-o', '/dev/null', '-'], env) &&
    succeeds(
      'avr-gcc',
      ['-mmcu=atmega328p', '-Os', '-c', '-x', 'c', '-o', '/dev/null', '-'],
      env,
      '#include <avr/io.h>\n',
    ) &&
    existsSync(join(usr, 'include/simavr/sim_avr.h'));
  if (!isWhole) return undefined;
  const emulatorFlags = [
    headers,
    ...libraries.map((path) => `-L${path}`),
    '-lsimavr',
    // The library that the emulator reads programs with comes without what linking asks for.
    '-Wl,--allow-shlib-undefined',
  ];
  return { env, emulatorFlags };
}

function succeeds(command: string, args: readonly string[], env: NodeJS.ProcessEnv, input = '') {
  return spawnSync(command, args, { env, input }).status === 0;
}

function fetchedTools(): ControllerTools | NoTools {
  const why = (reason: string) => ({ why: `no tools for controllers on PATH, and ${reason}` });
  if (!isDebian()) return why('this is no Debian to fetch them for');
  // Without a connection every file of tests would wait for it anew.
  if (existsSync(failure) && Date.now() - statSync(failure).mtimeMs < 600_000)
    return why(readFileSync(failure, 'utf8'));
  try {
    fetchDebianPackages({
      title: 'Tools for controllers',
      wanted,
      needed,
      unneeded,
      folder,
      isThere: () => toolsIn(join(folder, 'usr')) !== undefined,
    });
  } catch (error) {
    const reason = `fetching them failed: ${error instanceof Error ? error.message : error}`;
    writeFileSync(failure, reason);
    return why(reason);
  }
  return toolsIn(join(folder, 'usr')) ?? why('those that were fetched do not work here');
}
