import { cpSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { machineNode, packageFolders, readManifest, root, run } from './tarballs.js';
import { unpackedFiles, unpackedFolder } from './unpacked.js';

const names = packageFolders.map((folder) => readManifest(folder).name);
const manifestOf = (name: string) =>
  JSON.parse(readFileSync(join(unpackedFolder(name), 'package.json'), 'utf8'));

/** What each tarball may weigh, KB; half of core's is its sources and the maps to them. */
const heaviest: Readonly<Record<string, number>> = {
  '@truesweep/core': 1063,
  '@truesweep/cli': 193,
  '@truesweep/drawings': 178,
  '@truesweep/explain': 277,
  '@truesweep/history': 58,
  '@truesweep/jobs': 171,
  '@truesweep/queue': 120,
  '@truesweep/recordings': 161,
  '@truesweep/report': 94,
  '@truesweep/wording': 486,
};

describe.each(names)('the tarball of %s', (name) => {
  test('holds what someone needs who meets it by itself', () => {
    const files = unpackedFiles(name);
    for (const file of ['README.md', 'CHANGELOG.md', 'LICENSE']) expect(files).toContain(file);
    expect(files.filter((file) => /\.test(-d)?\.|tsconfig|tsup/.test(file))).toEqual([]);
    const readme = readFileSync(join(unpackedFolder(name), 'README.md'), 'utf8');
    expect(readme).toContain(`npm install ${name}`);
    expect(readme).toContain('(https://example.org/truesweep/)');
  });

  test('says in its manifest whose it is, and where it comes from', () => {
    const manifest = manifestOf(name);
    expect(manifest).toMatchObject({
      license: 'MIT',
      author: 'truesweep contributors',
      homepage: 'https://example.org/truesweep/',
      repository: {
        type: 'git',
        url: 'git+https://example.org/truesweep.git',
        directory: `packages/${name.slice('@truesweep/'.length)}`,
      },
      publishConfig: { access: 'public' },
      engines: { node: '>=20' },
    });
    expect(manifest.description.length).toBeGreaterThan(30);
    expect(manifest.keywords.length).toBeGreaterThan(3);
    expect(manifest.publishConfig).not.toHaveProperty('registry');
  });

  test('takes each package of truesweep in a range, not at one version', () => {
    const { version, dependencies = {} } = manifestOf(name);
    for (const [other, range] of Object.entries(dependencies))
      if (other.startsWith('@truesweep/')) expect(range).toBe(`^${version}`);
  });

  test(`weighs at most ${heaviest[name]} KB`, () => {
    const size = statSync(inject('tarballs')[name]!).size / 1024;
    console.log(`${name}: ${size.toFixed(0)} KB packed (holds: at most ${heaviest[name]})`);
    expect(size).toBeLessThanOrEqual(heaviest[name]!);
  });
});

test('core brings no other package with it; who reads unknown JSON by its schemas has valibot', () => {
  const { dependencies, peerDependencies, peerDependenciesMeta } = manifestOf('@truesweep/core');
  expect(dependencies).toBeUndefined();
  expect(peerDependencies).toEqual({ valibot: expect.any(String) });
  expect(peerDependenciesMeta).toEqual({ valibot: { optional: true } });
});

test('installed alone, core runs: every entry but that of the schemas', () => {
  // Outside of the scratch project, so that nothing above it lends a package.
  const alone = mkdtempSync(join(tmpdir(), 'truesweep-alone-'));
  const place = join(alone, 'node_modules', '@truesweep', 'core');
  cpSync(unpackedFolder('@truesweep/core'), place, { recursive: true });
  const keys = Object.keys(manifestOf('@truesweep/core').exports).filter(
    (key) => !key.endsWith('.json'),
  );
  const loads = (key: string) => {
    const entry = `@truesweep/core${key.slice(1)}`;
    const code = `require('${entry}'); import('${entry}').catch(() => process.exit(1));`;
    return run(machineNode(), ['-e', code], alone).status === 0;
  };
  expect(keys.filter((key) => !loads(key))).toEqual(['./schema']);
  rmSync(alone, { recursive: true });
});

test('no manifest, lock file or setting of the repository names a registry’s host', () => {
  const { stdout } = run('git', ['ls-files'], root);
  const settings = stdout
    .split('\n')
    .filter((path) => /(^|\/)(\.npmrc|package\.json|pnpm-.*\.yaml)$/.test(path));
  expect(settings.length).toBeGreaterThan(8);
  for (const path of settings)
    expect(readFileSync(join(root, path), 'utf8'), path).not.toMatch(
      /registry\.|"?registry"?\s*[=:]/,
    );
});

test('drawings take the page’s own Preact, where there is one', () => {
  const { dependencies, peerDependencies, peerDependenciesMeta } =
    manifestOf('@truesweep/drawings');
  expect(dependencies).not.toHaveProperty('preact');
  expect(peerDependencies).toEqual({ preact: expect.any(String) });
  expect(peerDependenciesMeta).toEqual({ preact: { optional: true } });
});
