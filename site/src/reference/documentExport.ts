import ts from 'typescript';

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

/** The tags of a doc comment that the reference shows. */
const shown = ['param', 'returns', 'throws', 'example'];

/**
 * What the reference says of an export.
 *
 * @throws Error where it has no doc comment, or one with a tag that would be lost.
 */
export function documentExport(
  name: string,
  declaration: ts.Declaration,
  checker: ts.TypeChecker,
  place: string,
): Documented {
  const tags = ts.getJSDocTags(declaration);
  const unknown = tags.find(({ tagName }) => !shown.includes(tagName.text));
  if (unknown)
    throw new Error(
      `${name} has the tag @${unknown.tagName.text}; the reference shows ${shown.join(', ')} only.`,
    );
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
    const signature = checker.getSignatureFromDeclaration(declaration);
    const inferred = signature && checker.typeToString(signature.getReturnType());
    const returned = declaration.type ? '' : `: ${inferred}`;
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
    // Long types of schemas are cut: what they read is told in words.
    const type = checker.typeToString(checker.getTypeAtLocation(declaration));
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
  const type = ts.isPropertySignature(member) ? member.type : undefined;
  const literal = type && literalIn(type);
  const isTold = literal?.members.some((inner) => commentOf(inner) !== '');
  if (!literal || !isTold) return { code: plain, text, members: [] };
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
