import { mkdirSync, readFileSync, realpathSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { dirname, join } from 'node:path';
import { packageFolders, readManifest, run } from './tarballs.js';

interface Served {
  readonly manifest: { readonly name: string; readonly version: string };
  readonly tarball: string;
}

/** Folders of the packages by other makers that the workspace's packages need, from the workspace's own install. */
function foreignFolders(): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const follow = (name: string, modules: string) => {
    if (found.has(name) || name.startsWith('@truesweep/')) return;
    const folder = realpathSync(join(modules, name));
    found.set(name, folder);
    const depth = name.startsWith('@') ? 2 : 1;
    const beside = depth === 1 ? dirname(folder) : dirname(dirname(folder));
    for (const next of neededBy(folder)) follow(next, beside);
  };
  for (const folder of packageFolders)
    for (const name of neededBy(folder)) follow(name, join(folder, 'node_modules'));
  return found;
}

function neededBy(folder: string): readonly string[] {
  const { dependencies } = readManifest(folder);
  return Object.keys(dependencies ?? {});
}

function pack(name: string, folder: string, into: string): Served {
  const tarball = join(into, `${name.replaceAll(/\W/g, '-')}.tgz`);
  const { status, stderr } = run(
    'tar',
    [
      '-czhf',
      tarball,
      '--exclude=./node_modules',
      '--transform=s,^\\.,package,',
      '-C',
      folder,
      '.',
    ],
    into,
  );
  if (status !== 0) throw new Error(`Packing ${name} failed: ${stderr}`);
  return { tarball, manifest: JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) };
}

/**
 * A registry on this machine with what other makers' packages the workspace has installed, and nothing of truesweep: an installer that
 * looks here finds truesweep's packages only in the files it was given.
 */
export async function localRegistry(
  into: string,
): Promise<{ readonly url: string; readonly server: Server }> {
  mkdirSync(into, { recursive: true });
  const served = new Map(
    [...foreignFolders()].map(([name, folder]) => [name, pack(name, folder, into)]),
  );
  const server = createServer((request, response) => {
    const [, kind, name] = /^\/(tarball\/)?(.+)$/.exec(decodeURIComponent(request.url ?? '')) ?? [];
    const found = served.get(name ?? '');
    if (!found) return response.writeHead(404).end('{}');
    if (kind) return response.end(readFileSync(found.tarball));
    const { manifest } = found;
    const tarball = `http://${request.headers.host}/tarball/${encodeURIComponent(manifest.name)}`;
    return response.end(
      JSON.stringify({
        name: manifest.name,
        'dist-tags': { latest: manifest.version },
        versions: { [manifest.version]: { ...manifest, dist: { tarball } } },
      }),
    );
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  return { url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`, server };
}
