import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (path: string) => readFileSync(join(root, path), 'utf8');
const manifests = globSync('packages/*/package.json', { cwd: root }).map((path) => ({
  path,
  manifest: JSON.parse(read(path)),
}));
const page = read('site/src/content/docs/developers/stability.mdx');

describe('what the page on stability says', () => {
  test('answers what is stable, how versions count, how long names stay, and where it runs', () => {
    const headings = [...page.matchAll(/^## (.*)$/gm)].map(([, heading]) => heading);
    expect(headings).toEqual([
      'What is stable',
      'How versions count',
      'How long a deprecated name stays',
      'Node and browsers',
    ]);
  });

  test('is so in every manifest: one version, and the oldest Node', () => {
    const oldest = /^\| Node \| (\d+) and newer/m.exec(page)?.[1];
    const versions = new Set(manifests.map(({ manifest }) => manifest.version));
    expect([...versions]).toHaveLength(1);
    for (const { path, manifest } of manifests)
      expect(manifest.engines.node, path).toBe(`>=${oldest}`);
  });

  test('names the TypeScript that the declarations are checked with', () => {
    const pinned = JSON.parse(read('package.json')).devDependencies.typescript;
    expect(page).toContain(`(${pinned.split('.').slice(0, 2).join('.')})`);
  });

  test('is kept by names marked as deprecated: each says what takes its place, and stands in the list of changes', () => {
    for (const path of globSync('packages/*/src/**/*.{ts,tsx}', { cwd: root })) {
      const marks = [...read(path).matchAll(/@deprecated(.*)/g)];
      const changes = read(join(...path.split(/[\\/]/).slice(0, 2), 'CHANGELOG.md'));
      for (const [, words] of marks) {
        const name = /`(\w+)`/.exec(words!)?.[1];
        expect(name, `${path}: @deprecated names what takes its place`).toBeDefined();
        expect(changes, path).toContain(`\`${name}\``);
      }
    }
  });
});

test('each version has its part in every list of changes', () => {
  for (const { path, manifest } of manifests)
    expect(read(path.replace('package.json', 'CHANGELOG.md'))).toContain(
      `## ${manifest.version}\n`,
    );
  expect(read('site/src/content/docs/changelog.mdx')).toContain(
    `## ${manifests[0]?.manifest.version}\n`,
  );
});

test('who wants to report or to contribute is told how, and where to read on', () => {
  const security = read('SECURITY.md');
  for (const heading of ['How to report', 'What is in scope', 'Which versions are mended'])
    expect(security).toContain(`## ${heading}\n`);
  for (const file of ['CONTRIBUTING.md', 'SECURITY.md', 'README.md', 'DEVELOPERS.md'])
    for (const [, target] of read(file).matchAll(/\]\(([^)#:]+)\)/g))
      expect(existsSync(join(root, target!)), `${file} leads to ${target}`).toBe(true);
  expect(read('README.md')).toContain('(SECURITY.md)');
  expect(read('README.md')).toContain('(CONTRIBUTING.md)');
});
