import { readFileSync } from 'node:fs';
import { SourceMap } from 'node:module';
import { dirname, join, posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import { packageFolders, readManifest } from './tarballs.js';
import { unpackedFiles, unpackedFolder } from './unpacked.js';

const names = packageFolders.map((folder) => readManifest(folder).name);
const read = (name: string, path: string) => readFileSync(join(unpackedFolder(name), path), 'utf8');

describe.each(names)('%s', (name) => {
  test('what is built says where its map is, and a map leads to sources that are published with it', () => {
    const files = new Set(unpackedFiles(name));
    const built = [...files].filter((path) => /^dist\/.*\.(js|cjs|d\.ts)$/.test(path));
    const mapped = built.filter((path) => files.has(`${path}.map`));
    const withoutMap = built.filter((path) => !files.has(`${path}.map`));
    for (const path of mapped) {
      expect(read(name, path)).toContain(`//# sourceMappingURL=${posix.basename(path)}.map`);
      const { sources, sourceRoot = '' } = JSON.parse(read(name, `${path}.map`));
      for (const source of sources)
        expect(files).toContain(posix.join(dirname(path), sourceRoot, source));
    }
    // A file for pages, minified with other makers' code inside, and modules that only hand on `index.cjs`.
    expect(
      withoutMap.filter(
        (path) =>
          path !== 'dist/browser.min.js' && !read(name, path).includes("require('./index.cjs')"),
      ),
    ).toEqual([]);
    expect(mapped.length).toBeGreaterThan(0);
  });
});

test.each([
  ['types/circuit/operatingPoint.d.ts', 'function operatingPoint(', 'circuit/operatingPoint.ts'],
  ['types-require/circuit/circuit.d.ts', 'interface Sensor', 'circuit/circuit.ts'],
  ['index.cjs', 'function scoreSweep(', 'score/scoreSweep.ts'],
])('the map of %s leads from `%s` to the line that says it', (file, words, source) => {
  const lines = read('@truesweep/core', `dist/${file}`).split('\n');
  const line = lines.findIndex((text) => text.includes(words));
  expect(line).toBeGreaterThanOrEqual(0);
  const map = new SourceMap(JSON.parse(read('@truesweep/core', `dist/${file}.map`)));
  const entry = map.findEntry(line, lines[line]!.indexOf(words) + words.indexOf(' ') + 1);
  if (!('originalSource' in entry)) throw new Error(`Nothing is mapped at line ${line + 1}.`);
  expect(entry.originalSource).toMatch(new RegExp(`/src/${source}$`));
  const original = read('@truesweep/core', `src/${source}`).split('\n')[entry.originalLine];
  expect(original).toContain(words);
});
