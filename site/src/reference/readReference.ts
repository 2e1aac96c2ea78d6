import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { type Documented, documentExport } from './documentExport.js';
import { type Entry, type Library, libraries, type Task } from './tasks.js';

/** The exports of an entry that belong to one task. */
export interface TaskExports {
  readonly title: string;
  readonly exports: readonly Documented[];
}

/** The page of an entry: what is documented there, and what it has besides. */
export interface EntryPage {
  readonly library: Library;
  readonly entry: Entry;
  /** As an import names it. */
  readonly name: string;
  /** The page's address below that of the reference, without slashes around it. */
  readonly path: string;
  readonly own: readonly TaskExports[];
  /** What other entries of the package document, by their pages' paths. */
  readonly elsewhere: readonly {
    readonly entry: Entry;
    readonly path: string;
    readonly tasks: readonly TaskExports[];
  }[];
}

/**
 * The pages of the reference, from the sources of the packages' entries.
 *
 * @param root The repository's folder.
 * @throws Error for an entry or an export that stands in no task, in several, or without a comment, and for a source in a task that exports nothing.
 */
export function readReference(root: string): readonly EntryPage[] {
  const entries = libraries.flatMap((library) => {
    checkEntries(root, library);
    return library.entries.map((entry) => ({
      library,
      entry,
      file: join(root, 'packages', library.name, 'src', `${entry.path || 'index'}.ts`),
    }));
  });
  const configFile = join(root, 'tsconfig.json');
  const { options } = ts.parseJsonConfigFileContent(
    ts.readConfigFile(configFile, ts.sys.readFile).config,
    ts.sys,
    root,
  );
  const program = ts.createProgram(
    entries.map(({ file }) => file),
    options,
  );
  const checker = program.getTypeChecker();
  const used = new Set<Task>();
  const unsorted: string[] = [];
  const exportsOf = entries.map(({ library, file }) =>
    exportsIn(program, file).flatMap(({ name, declaration }) => {
      const source = declaration
        .getSourceFile()
        .fileName.slice(join(root, 'packages', library.name, 'src').length + 1)
        .replace(/\.tsx?$/, '');
      const home = homeOf(library, source);
      if (!home) {
        unsorted.push(`${name} of ${library.name}/src/${source}`);
        return [];
      }
      used.add(home.task);
      const place = `${pathOf(library, home.entry)}/#${name}`;
      return [{ ...home, documented: documentExport(name, declaration, checker, place) }];
    }),
  );
  if (unsorted.length > 0)
    throw new Error(
      `The reference lacks a place for ${unsorted.join(', ')}: name each source in one task of site/src/reference/tasks.ts.`,
    );
  const empty = entries.flatMap(({ entry }) => entry.tasks.filter((task) => !used.has(task)));
  if (empty.length > 0)
    throw new Error(
      `Nothing is exported for “${empty.map(({ title }) => title).join('”, “')}”: take it out of site/src/reference/tasks.ts.`,
    );
  return entries.map(({ library, entry }, i) => {
    const byTask = (home: Entry): readonly TaskExports[] =>
      home.tasks.flatMap((task) => {
        const found = (exportsOf[i] ?? []).filter((one) => one.task === task);
        return found.length > 0
          ? [{ title: task.title, exports: found.map((one) => one.documented).sort(byKind) }]
          : [];
      });
    return {
      library,
      entry,
      name: `@truesweep/${pathOf(library, entry)}`,
      path: pathOf(library, entry),
      own: byTask(entry),
      elsewhere: library.entries
        .filter((other) => other !== entry)
        .map((other) => ({
          entry: other,
          path: pathOf(library, other),
          tasks: byTask(other),
        }))
        .filter(({ tasks }) => tasks.length > 0),
    };
  });
}

/** The address of an entry's page below that of the reference, without slashes around it. */
export function pathOf(library: Library, entry: Entry): string {
  return entry.path ? `${library.name}/${entry.path}` : library.name;
}

/** What a module exports, each with where it is declared. */
function exportsIn(
  program: ts.Program,
  file: string,
): readonly { readonly name: string; readonly declaration: ts.Declaration }[] {
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(file);
  const module = source && checker.getSymbolAtLocation(source);
  if (!module) throw new Error(`The entry ${file} is no module.`);
  return checker.getExportsOfModule(module).flatMap((symbol) => {
    const target = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
    const declaration = target.declarations?.[0];
    return declaration ? [{ name: symbol.name, declaration }] : [];
  });
}

/** The entries of a package are those of its manifest. */
function checkEntries(root: string, { name, entries }: Library): void {
  const manifest = JSON.parse(readFileSync(join(root, 'packages', name, 'package.json'), 'utf8'));
  const published = Object.keys(manifest.exports)
    .filter((key) => !key.endsWith('.json'))
    .map((key) => key.slice(2))
    .sort();
  const told = entries.map(({ path }) => path).sort();
  if (published.join() !== told.join())
    throw new Error(
      `The manifest of ${name} has the entries ${published.join(', ')}; site/src/reference/tasks.ts has ${told.join(', ')}.`,
    );
}

/** The entry and the task whose page documents a source: the one that names it most exactly. */
function homeOf(
  library: Library,
  source: string,
): { readonly entry: Entry; readonly task: Task } | undefined {
  const found = library.entries.flatMap((entry) =>
    entry.tasks.flatMap((task) =>
      task.sources
        .filter((named) => source === named || source.startsWith(`${named}/`))
        .map((named) => ({ entry, task, exactness: named.length })),
    ),
  );
  return found.sort((a, b) => b.exactness - a.exactness)[0];
}

const kinds = ['class', 'function', 'constant', 'type'];

/** What is called stands before what it takes and gives. */
function byKind(a: Documented, b: Documented): number {
  return kinds.indexOf(a.kind) - kinds.indexOf(b.kind) || a.name.localeCompare(b.name);
}
