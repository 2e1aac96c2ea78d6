import { join } from 'node:path';
import ts from 'typescript';
import { packageFolders, readManifest, root } from '../package/tarballs.js';

/** A field of a type that a package's entries offer. */
export interface PublicField {
  readonly file: string;
  /** Owner and name, such as `Sensor.track`. */
  readonly name: string;
  /** What the doc comments say: the field's own, and those of the field or the member of a union whose inline type holds it. */
  readonly comment: string;
  readonly type: string;
  readonly isOptional: boolean;
  /** A number, of a unit or plain; not one of a few literals. */
  readonly isNumber: boolean;
  /** One word or number that tells the member of a union. */
  readonly isTag: boolean;
  /** Whether a public function takes it. */
  readonly isInput: boolean;
}

const configFile = join(root, 'tsconfig.json');
const { options } = ts.parseJsonConfigFileContent(
  ts.readConfigFile(configFile, ts.sys.readFile).config,
  ts.sys,
  root,
);

/** The sources of the entries of all libraries. */
const entries = packageFolders.flatMap((folder) =>
  Object.keys(readManifest(folder).exports)
    .filter((key) => !key.endsWith('.json'))
    .map((key) => join(folder, 'src', `${key === '.' ? 'index' : key.slice(2)}.ts`)),
);

/** Every field of the types that can be met from outside, each once. */
export function publicFields(): readonly PublicField[] {
  const program = ts.createProgram(entries, options);
  const checker = program.getTypeChecker();
  const taken = reached(program, checker, 'parameters');
  const all = new Set([...taken, ...reached(program, checker, 'all')]);
  return [...all].flatMap((node) =>
    ts.isPropertySignature(node) ? [describe(node, checker, taken.has(node))] : [],
  );
}

function describe(
  node: ts.PropertySignature,
  checker: ts.TypeChecker,
  isInput: boolean,
): PublicField {
  const type = checker.getNonNullableType(checker.getTypeAtLocation(node));
  return {
    file: node.getSourceFile().fileName.slice(root.length),
    name: `${ownersOf(node).join('.')}.${node.name.getText()}`,
    comment: [node, ...holdersOf(node)].map(commentOf).join(' '),
    type: node.type?.getText() ?? '',
    isOptional: node.questionToken !== undefined,
    isNumber: isNumber(type),
    isTag: node.type !== undefined && ts.isLiteralTypeNode(node.type),
    isInput,
  };
}

function isNumber(type: ts.Type): boolean {
  if (type.isIntersection()) return type.types.some(isNumber);
  return (type.flags & ts.TypeFlags.Number) !== 0;
}

function commentOf(node: ts.Node): string {
  if (ts.isTypeLiteralNode(node)) {
    const text = node.getSourceFile().text;
    return (ts.getLeadingCommentRanges(text, node.pos) ?? [])
      .map(({ pos, end }) => text.slice(pos, end))
      .join(' ');
  }
  return ts
    .getJSDocCommentsAndTags(node)
    .map((doc) => (typeof doc.comment === 'string' ? doc.comment : doc.getText()))
    .join(' ');
}

/** The fields and the members of unions in whose inline types a node stands. */
function holdersOf(node: ts.Node): ts.Node[] {
  const { parent } = node;
  if (!parent || ts.isInterfaceDeclaration(parent) || ts.isTypeAliasDeclaration(parent)) return [];
  const isHolder = ts.isPropertySignature(parent) || ts.isTypeLiteralNode(parent);
  return isHolder ? [parent, ...holdersOf(parent)] : holdersOf(parent);
}

function ownersOf(node: ts.Node): string[] {
  const { parent } = node;
  if (!parent || ts.isSourceFile(parent)) return [];
  const isNamed =
    ts.isInterfaceDeclaration(parent) ||
    ts.isTypeAliasDeclaration(parent) ||
    ts.isPropertySignature(parent);
  return [...ownersOf(parent), ...(isNamed ? [parent.name.getText()] : [])];
}

/** The nodes of type declarations that exports lead to, or that parameters of exported functions do. */
function reached(
  program: ts.Program,
  checker: ts.TypeChecker,
  from: 'all' | 'parameters',
): ReadonlySet<ts.Node> {
  const found = new Set<ts.Node>();
  const target = (symbol: ts.Symbol) =>
    symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
  const followSymbol = (symbol: ts.Symbol | undefined) => {
    for (const declaration of (symbol && target(symbol).declarations) ?? []) {
      const isOurs = declaration.getSourceFile().fileName.startsWith(join(root, 'packages'));
      if (
        isOurs &&
        (ts.isInterfaceDeclaration(declaration) || ts.isTypeAliasDeclaration(declaration))
      )
        follow(declaration);
    }
  };
  const follow = (node: ts.Node) => {
    if (found.has(node)) return;
    found.add(node);
    if (ts.isTypeReferenceNode(node)) followSymbol(checker.getSymbolAtLocation(node.typeName));
    if (ts.isExpressionWithTypeArguments(node))
      followSymbol(checker.getSymbolAtLocation(node.expression));
    ts.forEachChild(node, follow);
  };
  for (const file of entries) {
    const module = checker.getSymbolAtLocation(program.getSourceFile(file)!);
    for (const symbol of module ? checker.getExportsOfModule(module) : []) {
      for (const declaration of target(symbol).declarations ?? []) {
        if (ts.isFunctionDeclaration(declaration)) {
          // A literal type of a parameter is told by the function's own comment; what it refers to has fields of its own.
          for (const { type } of declaration.parameters) if (type) followReferences(type);
          if (declaration.type && from === 'all') followReferences(declaration.type);
        } else if (from === 'all') followSymbol(symbol);
      }
    }
  }
  return found;

  function followReferences(type: ts.Node) {
    if (ts.isTypeReferenceNode(type)) follow(type);
    else ts.forEachChild(type, followReferences);
  }
}
