import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import ts from 'typescript';

/** The declarations of an ES module, and the same for `require`: what a file's imports mean depends on which kind it is. */
const kinds = [
  { folder: 'types', type: 'module' },
  { folder: 'types-require', type: 'commonjs' },
] as const;

/**
 * Writes the declarations of a package's entries, file by file as the sources are, each with a map that leads to its source. Files that no
 * entry's declarations lead to are left out.
 *
 * @returns The names of the values that each entry exports.
 */
export function writeDeclarations(
  folder: string,
  entries: readonly string[],
): ReadonlyMap<string, readonly string[]> {
  const program = programOf(folder, entries);
  const emitted = emittedFiles(program);
  const wanted = reachedFiles(
    emitted,
    entries.map((name) => declarationOf(emitted, join(folder, 'src', name))),
  );
  for (const kind of kinds) {
    const place = join(folder, 'dist', kind.folder);
    for (const file of wanted) {
      for (const path of [file, `${file}.map`]) {
        const target = join(place, relative(join(folder, 'dist', 'types'), path));
        mkdirSync(dirname(target), { recursive: true });
        writeFileSync(target, emitted.get(path) ?? '');
      }
    }
    writeFileSync(join(place, 'package.json'), `${JSON.stringify({ type: kind.type })}\n`);
  }
  return new Map(entries.map((name) => [name, valuesOf(program, join(folder, 'src', name))]));
}

function programOf(folder: string, entries: readonly string[]): ts.Program {
  const configPath = join(folder, 'tsconfig.json');
  const { options } = ts.parseJsonConfigFileContent(
    ts.readConfigFile(configPath, ts.sys.readFile).config,
    ts.sys,
    folder,
  );
  return ts.createProgram(
    entries.map((name) => sourceOf(join(folder, 'src', name))),
    {
      ...options,
      noEmit: false,
      declaration: true,
      declarationMap: true,
      emitDeclarationOnly: true,
      rootDir: join(folder, 'src'),
      outDir: join(folder, 'dist', 'types'),
    },
  );
}

const sourceOf = (path: string) =>
  ts.sys.fileExists(`${path}.tsx`) ? `${path}.tsx` : `${path}.ts`;

function emittedFiles(program: ts.Program): ReadonlyMap<string, string> {
  const emitted = new Map<string, string>();
  const { diagnostics } = program.emit(undefined, (path, text) => {
    emitted.set(resolve(path), text);
  });
  const wrong = [...ts.getPreEmitDiagnostics(program), ...diagnostics];
  if (wrong.length > 0)
    throw new Error(
      ts.formatDiagnostics(wrong, {
        getCurrentDirectory: () => process.cwd(),
        getCanonicalFileName: (name) => name,
        getNewLine: () => '\n',
      }),
    );
  return emitted;
}

function declarationOf(emitted: ReadonlyMap<string, string>, source: string): string {
  const path = `${source.replace(/([\\/])src([\\/])(?!.*[\\/]src[\\/])/, '$1dist$1types$2')}.d.ts`;
  if (!emitted.has(path)) throw new Error(`No declaration was made of ${source}.`);
  return path;
}

/** The files that these lead to by their imports, themselves included. */
function reachedFiles(
  emitted: ReadonlyMap<string, string>,
  entries: readonly string[],
): ReadonlySet<string> {
  const reached = new Set(entries);
  for (const file of reached) {
    for (const { fileName } of ts.preProcessFile(emitted.get(file) ?? '').importedFiles) {
      const path = resolve(dirname(file), fileName.replace(/\.js$/, '.d.ts'));
      if (emitted.has(path)) reached.add(path);
    }
  }
  return reached;
}

function valuesOf(program: ts.Program, source: string): readonly string[] {
  const checker = program.getTypeChecker();
  const file = program.getSourceFile(sourceOf(source));
  const module = file && checker.getSymbolAtLocation(file);
  if (!module) return [];
  return checker
    .getExportsOfModule(module)
    .filter((symbol) => {
      const target =
        symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
      return target.flags & ts.SymbolFlags.Value;
    })
    .map(({ name }) => name)
    .sort();
}
