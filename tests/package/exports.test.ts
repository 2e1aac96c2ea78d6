import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { packageFolders, readManifest } from './tarballs.js';

/** The declaration file of every entry, by the name that an import writes. */
const entries = packageFolders.flatMap((folder) => {
  const { name, exports } = readManifest(folder);
  return Object.keys(exports)
    .filter((key) => !key.endsWith('.json'))
    .map((key) => ({
      entry: name + key.slice(1),
      file: join(folder, 'dist', 'types', `${key === '.' ? 'index' : key.slice(2)}.d.ts`),
    }));
});

const program = ts.createProgram(
  entries.map(({ file }) => file),
  { module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler, types: [] },
);
const checker = program.getTypeChecker();

/** Names that a declaration file exports, a type marked as one. */
function exportedNames(file: string): string[] {
  const module = checker.getSymbolAtLocation(program.getSourceFile(file)!);
  if (!module) return [];
  return checker
    .getExportsOfModule(module)
    .map((symbol) => {
      const target =
        symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
      return `${target.flags & ts.SymbolFlags.Value ? '' : 'type '}${symbol.name}`;
    })
    .sort();
}

// A change of what is exported is meant or it is a mistake: `vitest run --project package -u` writes the new list.
test.each(entries)('$entry exports what its list says', async ({ entry, file }) => {
  const list = `${exportedNames(file).join('\n')}\n`;
  await expect(list).toMatchFileSnapshot(
    `exports/${entry.replace('@truesweep/', '').replace('/', '.')}.txt`,
  );
});

test('the entries of core by use have together what the main entry has', () => {
  const of = (wanted: (entry: string) => boolean) =>
    entries.filter(({ entry }) => wanted(entry)).flatMap(({ file }) => exportedNames(file));
  const byUse = of((entry) => /^@truesweep\/core\/(?!schema$)/.test(entry));
  expect([...new Set(byUse)].sort()).toEqual(of((entry) => entry === '@truesweep/core'));
});
