import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { mkdir, mkdtemp, rename, rm, symlink } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Folders of the packages that are published. */
export const packageFolders: readonly string[] = readdirSync(join(root, 'packages')).map((name) =>
  join(root, 'packages', name),
);

export interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly engines: { readonly node: string };
  readonly exports: Readonly<Record<string, unknown>>;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly peerDependencies?: Readonly<Record<string, string>>;
}

export function readManifest(folder: string): Manifest {
  return JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
}

export interface Outcome {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export function run(command: string, args: readonly string[], cwd: string): Outcome {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd, encoding: 'utf8' });
  return { status, stdout, stderr };
}

/** Packs every package as it would be published; returns the tarball of each package by name. */
function packAll(into: string): ReadonlyMap<string, string> {
  const { packageManager } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const pack = `pnpm --filter "./packages/*" exec pnpm pack --pack-destination "${into}"`;
  const args = ['--yes', '--prefer-offline', `--package=${packageManager}`, '-c', pack];
  const { status, stdout, stderr } = run('npx', args, root);
  if (status !== 0) throw new Error(`Packing failed: ${stdout}${stderr}`);
  return new Map(
    packageFolders.map((folder) => {
      const { name, version } = readManifest(folder);
      const file = join(into, `${name.replace('@', '').replace('/', '-')}-${version}.tgz`);
      if (!existsSync(file)) throw new Error(`${name} was packed, but ${file} is not there.`);
      return [name, file];
    }),
  );
}

/** Puts a package of another maker where the scratch project finds it, from the workspace's own install. */
async function linkForeign(name: string, from: string, modules: string) {
  const place = join(modules, name);
  if (existsSync(place)) return;
  await mkdir(dirname(place), { recursive: true });
  await symlink(join(from, 'node_modules', name), place, 'junction');
}

interface Scratch {
  readonly folder: string;
  readonly tarballs: ReadonlyMap<string, string>;
  readonly remove: () => Promise<void>;
}

/**
 * A project in the temporary folder with the tarballs unpacked as an installer would: only what a tarball
 * holds, and only the dependencies and peers that its own manifest names. Needs no network.
 */
export async function scratchProject(): Promise<Scratch> {
  const folder = await mkdtemp(join(tmpdir(), 'truesweep-package-'));
  const modules = join(folder, 'node_modules');
  const tarballs = packAll(folder);
  for (const [name, tarball] of tarballs) {
    const place = join(modules, name);
    await mkdir(dirname(place), { recursive: true });
    const { status, stderr } = run('tar', ['-xzf', basename(tarball)], folder);
    if (status !== 0) throw new Error(`Unpacking ${tarball} failed: ${stderr}`);
    await rename(join(folder, 'package'), place);
    const from = join(root, 'packages', name.slice('@truesweep/'.length));
    const { dependencies, peerDependencies } = readManifest(place);
    for (const dependency of Object.keys({ ...dependencies, ...peerDependencies }))
      if (!dependency.startsWith('@truesweep/')) await linkForeign(dependency, from, modules);
  }
  return { folder, tarballs, remove: () => rm(folder, { recursive: true, force: true }) };
}

/** The first `node` on PATH that no package brought: the one the machine's owner installed. */
export function machineNode(): string {
  const name = process.platform === 'win32' ? 'node.exe' : 'node';
  const found = (process.env.PATH ?? '')
    .split(delimiter)
    .filter((folder) => !/[\\/]node_modules([\\/]|$)/.test(folder))
    .map((folder) => join(folder, name))
    .find((path) => existsSync(path));
  if (!found) throw new Error('There is no node on PATH outside node_modules.');
  return found;
}
