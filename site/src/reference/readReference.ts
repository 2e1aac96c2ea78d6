import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { type Entry, type Library, libraries, type Task } from './tasks.js';

/** A parameter of a function or of a constructor, with what its comment says. */
export interface Told {
  readonly name: string;
  readonly text: string;
}

/** A member of a type, with those of the type that is written in it. */
export interface Member {
  /** Its name and its type; of a type that is written in it the members follow. */
  readonly code: string;
  readonly text: string;
  readonly members: readonly Member[];
}

/** What is documented of an export. */
export interface Documented {
  readonly name: string;
  readonly kind: 'function' | 'class' | 'type' | 'constant';
  /** As it is declared; an interface without its members. */
  readonly code: string;
  readonly text: string;
  readonly members: readonly Member[];
  readonly parameters: readonly Told[];
  readonly returns?: string;
  readonly throws: readonly string[];
  readonly example?: string;
  /** The address of its place, below that of the reference. */
  readonly place: string;
}

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
    checker
      .getExportsOfModule(checker.getSymbolAtLocation(program.getSourceFile(file)!)!)
      .flatMap((symbol) => {
        const target =
          symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
        const declaration = target.declarations![0]!;
        const source = declaration
          .getSourceFile()
          .fileName.slice(join(root, 'packages', library.name, 'src').length + 1)
          .replace(/\.tsx?$/, '');
        const home = homeOf(library, source);
        if (!home) {
          unsorted.push(`${symbol.name} of ${library.name}/src/${source}`);
          return [];
        }
        used.add(home.task);
        const place = `${pathOf(library, home.entry)}/#${symbol.name}`;
        return [{ ...home, documented: document(symbol.name, declaration, checker, place) }];
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
    const exportsIn = (home: Entry): readonly TaskExports[] =>
      home.tasks.flatMap((task) => {
        const found = exportsOf[i]!.filter((one) => one.task === task);
        return found.length > 0
          ? [{ title: task.title, exports: found.map((one) => one.documented).sort(byKind) }]
          : [];
      });
    return {
      library,
      entry,
      name: `@truesweep/${pathOf(library, entry)}`,
      path: pathOf(library, entry),
      own: exportsIn(entry),
      elsewhere: library.entries
        .filter((other) => other !== entry)
        .map((other) => ({
          entry: other,
          path: pathOf(library, other),
          tasks: exportsIn(other),
        }))
        .filter(({ tasks }) => tasks.length > 0),
    };
  });
}

/** The address of an entry's page below that of the reference, without slashes around it. */
export function pathOf(library: Library, entry: Entry): string {
  return entry.path ? `${library.name}/${entry.path}` : library.name;
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

function document(
  name: string,
  declaration: ts.Declaration,
  checker: ts.TypeChecker,
  place: string,
): Documented {
  const tags = ts.getJSDocTags(declaration);
  const textsOf = (tag: string) =>
    tags.filter(({ tagName }) => tagName.text === tag).map(({ comment }) => textOf(comment));
  const text = commentOf(declaration);
  if (text === '')
    throw new Error(`${name} in ${declaration.getSourceFile().fileName} has no doc comment.`);
  const [returns] = textsOf('returns');
  const [example] = textsOf('example');
  return {
    name,
    text,
    place,
    ...codeOf(name, declaration, checker),
    parameters: tags.filter(ts.isJSDocParameterTag).map((tag) => ({
      name: tag.name.getText(),
      text: textOf(tag.comment),
    })),
    throws: textsOf('throws'),
    ...(returns !== undefined && { returns }),
    ...(example !== undefined && { example: example.replace(/^```\w*\n|\n```$/g, '') }),
  };
}

function codeOf(
  name: string,
  declaration: ts.Declaration,
  checker: ts.TypeChecker,
): Pick<Documented, 'kind' | 'code' | 'members'> {
  if (ts.isFunctionDeclaration(declaration)) {
    const { body } = declaration;
    const file = declaration.getSourceFile();
    const head = file.text.slice(declaration.getStart(), body?.pos ?? declaration.end);
    const plain = head.replace(/^(export |async )+/, '').trim();
    const returned = declaration.type
      ? ''
      : `: ${checker.typeToString(checker.getSignatureFromDeclaration(declaration)!.getReturnType())}`;
    return { kind: 'function', code: plain + returned, members: [] };
  }
  if (ts.isInterfaceDeclaration(declaration)) {
    const [parameters, heritage] = [declaration.typeParameters, declaration.heritageClauses];
    const head = `interface ${name}${parameters ? `<${parameters.map((one) => one.getText()).join(', ')}>` : ''}`;
    const code = [head, ...(heritage ?? []).map((one) => one.getText())].join(' ');
    return { kind: 'type', code, members: declaration.members.map(memberOf) };
  }
  if (ts.isClassDeclaration(declaration)) {
    const own = declaration.members.filter(
      (member) => ts.isPropertyDeclaration(member) && member.type !== undefined,
    );
    const built = declaration.members.find(ts.isConstructorDeclaration);
    const lines = [
      `class ${name} ${(declaration.heritageClauses ?? []).map((one) => one.getText()).join(' ')} {`,
      ...own.map((member) => `  ${member.getText()}`),
      ...(built
        ? [`  constructor(${built.parameters.map((one) => one.getText()).join(', ')});`]
        : []),
      '}',
    ];
    return { kind: 'class', code: lines.join('\n'), members: [] };
  }
  if (ts.isVariableDeclaration(declaration)) {
    const type = checker.typeToString(
      checker.getTypeAtLocation(declaration),
      undefined,
      // Long types of schemas are cut: what they read is told in words.
      ts.TypeFormatFlags.None,
    );
    return {
      kind: 'constant',
      code: `const ${name}: ${declaration.type?.getText() ?? type}`,
      members: [],
    };
  }
  return {
    kind: 'type',
    code: declaration.getText().replace(/^export /, ''),
    members: [],
  };
}

/** A member of an interface; where its type is written out in it, so are that type's members. */
function memberOf(member: ts.TypeElement): Member {
  const text = commentOf(member);
  const plain = member
    .getText()
    .replace(/^readonly /, '')
    .replace(/;$/, '');
  const literal = ts.isPropertySignature(member) && member.type && literalIn(member.type);
  if (!literal || !literal.members.some((inner) => commentOf(inner) !== ''))
    return { code: plain, text, members: [] };
  const [before, after] = [
    plain.slice(0, plain.indexOf('{')).trimEnd(),
    plain.slice(plain.lastIndexOf('}') + 1),
  ];
  return { code: `${before} { … }${after}`, text, members: literal.members.map(memberOf) };
}

/** The type that is written out in another, where it is the only one. */
function literalIn(type: ts.TypeNode): ts.TypeLiteralNode | undefined {
  const found: ts.TypeLiteralNode[] = [];
  const visit = (node: ts.Node) => {
    if (ts.isTypeLiteralNode(node)) found.push(node);
    else ts.forEachChild(node, visit);
  };
  visit(type);
  return found.length === 1 ? found[0] : undefined;
}

function commentOf(node: ts.Node): string {
  return ts
    .getJSDocCommentsAndTags(node)
    .filter(ts.isJSDoc)
    .map(({ comment }) => textOf(comment))
    .join('\n\n');
}

function textOf(comment: ts.JSDocTag['comment']): string {
  return ts.getTextOfJSDocComment(comment) ?? '';
}
