import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { dirname, join } from 'node:path';

/** Packages of Debian that are unpacked into a folder. */
export interface WantedPackages {
  /** What is wanted, for who reads what was fetched. */
  readonly title: string;
  /** Their names. */
  readonly wanted: readonly string[];
  /** Of what they depend on, only this: a machine has the rest, or nothing here needs it. */
  readonly needed: RegExp;
  /** What is not unpacked, as patterns of `tar`. */
  readonly unneeded?: readonly string[];
  /** Where they are unpacked to, as a whole. */
  readonly folder: string;
  /** Whether what is in the folder works: another process may have been faster. */
  readonly isThere: () => boolean;
}

/** Whether this machine is one to fetch Debian's packages for. */
export function isDebian(): boolean {
  return existsSync('/etc/debian_version') && spawnSync('apt-get', ['--version']).status === 0;
}

/** Unpacks packages, without installing anything and without being root. */
export function fetchDebianPackages(packages: WantedPackages): void {
  const { title, unneeded = [], folder, isThere } = packages;
  const begun = performance.now();
  mkdirSync(dirname(folder), { recursive: true });
  const work = mkdtempSync(join(dirname(folder), 'fetch-'));
  try {
    const state = statePaths(work, packages);
    const names = packageNames(work, state, packages);
    output('apt-get', [...state, 'download', ...names], work);
    const unpacked = join(work, 'unpacked');
    mkdirSync(unpacked);
    const archives = readdirSync(work).filter((name) => name.endsWith('.deb'));
    for (const archive of archives) {
      const unpack = 'dpkg-deb --fsys-tarfile "$0" | tar -x -C unpacked "$@"';
      const left = unneeded.map((pattern) => `--exclude=${pattern}`);
      output('sh', ['-c', unpack, archive, ...left], work);
    }
    // Only as a whole, and once.
    if (!isThere()) {
      rmSync(folder, { recursive: true, force: true });
      renameSync(unpacked, folder);
    }
    const megabytes =
      archives.reduce((sum, name) => sum + statSync(join(work, name)).size, 0) / 1e6;
    const seconds = (performance.now() - begun) / 1000;
    console.log(
      `${title} fetched: ${archives.length} packages, ${megabytes.toFixed(1)} MB, ${seconds.toFixed(1)} s`,
    );
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

/** Runs a program to its end and returns what it printed. */
function output(command: string, args: readonly string[], cwd: string): string {
  const { status, stdout, stderr, error } = spawnSync(command, args, {
    cwd,
    encoding: 'utf8',
    timeout: 600_000,
    maxBuffer: 1 << 26,
  });
  if (status === 0) return stdout;
  const last = stderr?.trim().split('\n').at(-1) || error?.message || `exit code ${status}`;
  throw new Error(`${command}: ${last}`);
}

/** Options by which package lists are the machine's, or, where it has none, ones of our own. */
function statePaths(work: string, { wanted }: WantedPackages): string[] {
  const patience = ['-o', 'Acquire::Retries=1', '-o', 'Acquire::http::Timeout=20'];
  const hasLists = /^ {2}Candidate: \d/m.test(output('apt-cache', ['policy', wanted[0]!], work));
  if (hasLists) return patience;
  for (const path of ['state/lists/partial', 'cache/archives/partial'])
    mkdirSync(join(work, path), { recursive: true });
  const own = [
    ...['-o', `Dir::State=${join(work, 'state')}`, '-o', `Dir::Cache=${join(work, 'cache')}`],
    ...patience,
  ];
  output('apt-get', [...own, 'update'], work);
  return own;
}

function packageNames(
  work: string,
  state: readonly string[],
  { wanted, needed }: WantedPackages,
): string[] {
  const dependencies = ['recommends', 'suggests', 'conflicts', 'breaks', 'replaces', 'enhances'];
  const listed = output(
    'apt-cache',
    [...state, 'depends', '--recurse', ...dependencies.map((kind) => `--no-${kind}`), ...wanted],
    work,
  );
  return [...new Set(listed.split('\n'))].filter((name) => needed.test(name));
}
