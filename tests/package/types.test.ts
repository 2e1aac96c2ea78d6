import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, inject, test } from 'vitest';
import { packageFolders, readManifest } from './tarballs.js';
import { unpackedFolder } from './unpacked.js';

const entries = packageFolders.flatMap((folder) => {
  const { name, exports } = readManifest(folder);
  return Object.keys(exports)
    .filter((key) => !key.endsWith('.json'))
    .map((key) => name + key.slice(1));
});

/** Entries of Preact components and of valibot's schemas: those packages' own declarations speak of pages. */
const ofPages = ['@truesweep/core/schema', '@truesweep/drawings', '@truesweep/report'];

/** Every declaration is read once for all programs, whose target is the same; each program is checked whole by itself. */
const read = new Map<string, ts.SourceFile | undefined>();

function hostOf(options: ts.CompilerOptions): ts.CompilerHost {
  const host = ts.createCompilerHost(options);
  return {
    ...host,
    getSourceFile: (name, how, ...more) => {
      const kind = typeof how === 'object' ? how.impliedNodeFormat : how;
      const key = `${name} ${kind}`;
      if (!read.has(key)) read.set(key, host.getSourceFile(name, how, ...more));
      return read.get(key);
    },
  };
}

/** What TypeScript says of a program that takes everything of an entry, the declarations checked too. */
function complaints(entry: string, ending: string, lib: readonly string[]): string[] {
  const folder = join(inject('scratch'), 'types');
  mkdirSync(folder, { recursive: true });
  const file = join(folder, `${entry.replaceAll(/\W/g, '-')}.${ending}`);
  writeFileSync(file, `import * as all from '${entry}';\nexport const names: object = all;\n`);
  const options: ts.CompilerOptions = {
    strict: true,
    skipLibCheck: false,
    // TypeScript's own declarations are not ours to prove; what a package's lack of them, or change in them, is told at the package's.
    skipDefaultLibCheck: true,
    types: [],
    lib: lib.map((name) => `lib.${name}.d.ts`),
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    noEmit: true,
  };
  const program = ts.createProgram([file], options, hostOf(options));
  return ts.getPreEmitDiagnostics(program).map(({ file: at, messageText }) => {
    const text = ts.flattenDiagnosticMessageText(messageText, ' ');
    return `${at?.fileName.replace(/^.*node_modules\//, '')}: ${text}`;
  });
}

describe.each(['mts', 'cts'])('in a .%s file', (ending) => {
  test.each(entries.filter((entry) => !ofPages.includes(entry)))(
    'the types of %s need neither a page’s globals nor Node’s',
    (entry) => {
      expect(complaints(entry, ending, ['es2022'])).toEqual([]);
    },
  );

  test.each(ofPages)('the types of %s are right in a page', (entry) => {
    expect(complaints(entry, ending, ['es2022', 'dom', 'dom.iterable'])).toEqual([]);
  });
});

test.each(['js', 'cjs'])('drawings as text are made without Preact (svg.%s)', (ending) => {
  const built = readFileSync(
    join(unpackedFolder('@truesweep/drawings'), 'dist', `svg.${ending}`),
    'utf8',
  );
  expect(built).not.toMatch(/['"]preact/);
});
