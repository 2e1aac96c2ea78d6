import ts from 'typescript';
import { expect } from 'vitest';

type Names = Readonly<Record<string, unknown>>;

const AsyncFunction = Object.getPrototypeOf(async () => {}).constructor as new (
  ...parts: string[]
) => (...values: unknown[]) => Promise<void>;

/** The workspace's packages as the examples may import them. */
const modules: Readonly<Record<string, () => Promise<Names>>> = {
  '@truesweep/core': () => import('@truesweep/core'),
  '@truesweep/core/schema': () => import('@truesweep/core/schema'),
  '@truesweep/recordings': () => import('@truesweep/recordings'),
  '@truesweep/jobs': () => import('@truesweep/jobs'),
  '@truesweep/jobs/node': () => import('@truesweep/jobs/node'),
  '@truesweep/queue': () => import('@truesweep/queue'),
  '@truesweep/wording': () => import('@truesweep/wording'),
  '@truesweep/drawings': () => import('@truesweep/drawings'),
};

async function load(specifier: string): Promise<Names> {
  return modules[specifier] ? modules[specifier]() : import(specifier);
}

/** What a statement's closing comment says its value is: the text after `// =>` on the statement's last line. */
function promised(statement: ts.Statement, text: string): string | undefined {
  const rest = text.slice(statement.end).split('\n', 1)[0] ?? '';
  return /^\s*\/\/\s*=>\s*(.+?)\s*$/.exec(rest)?.[1];
}

/** The expression whose value the comment promises: the statement's own, what it logs, or the variable it declares. */
function subject(statement: ts.Statement, source: ts.SourceFile): string {
  if (ts.isExpressionStatement(statement)) {
    const { expression } = statement;
    const logged =
      ts.isCallExpression(expression) && expression.expression.getText(source) === 'console.log';
    return (logged ? expression.arguments[0]! : expression).getText(source);
  }
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations[0]!.name.getText(source);
  throw new Error(`A value can't be promised after: ${statement.getText(source)}`);
}

/** An import from a module as the same names taken from `load`. */
function importAsConst(statement: ts.ImportDeclaration): string {
  const from = (statement.moduleSpecifier as ts.StringLiteral).text;
  const bindings = statement.importClause?.namedBindings;
  if (!bindings || !ts.isNamedImports(bindings))
    throw new Error(`Examples import by name only; this one doesn't, from ${from}.`);
  const names = bindings.elements
    .filter((element) => !element.isTypeOnly)
    .map(({ name, propertyName }) => `${propertyName ? `${propertyName.text}: ` : ''}${name.text}`);
  return `const { ${names.join(', ')} } = await load('${from}');`;
}

function rewrite(statement: ts.Statement, source: ts.SourceFile, text: string): string {
  if (ts.isImportDeclaration(statement))
    return statement.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword
      ? ''
      : importAsConst(statement);
  const promise = promised(statement, text);
  const code = statement.getText(source);
  if (promise === undefined) return code;
  const check = `check(${subject(statement, source)}, ${JSON.stringify(promise)});`;
  return ts.isExpressionStatement(statement) ? check : `${code}\n${check}`;
}

/** Compares a value with its promise: a JavaScript value, a typed array as Node prints it, or `≈` and a rounded number. */
function compare(value: unknown, promise: string) {
  const rounded = /^≈\s*(-?\d+(?:\.(\d+))?)$/.exec(promise);
  if (rounded) {
    expect(value, promise).toBeCloseTo(Number(rounded[1]), rounded[2]?.length ?? 0);
    return;
  }
  const typed = promise.replace(/^(Float64Array|Uint8Array)\s*(\[.*\])$/, 'new $1($2)');
  expect(value, promise).toEqual(new Function(`return (${typed});`)());
}

/**
 * Runs an example and compares each statement followed by `// => value`; returns how many were compared.
 *
 * @param text TypeScript, with or without imports.
 * @param names What the example may use without an import.
 */
export async function runExample(text: string, names: Names): Promise<number> {
  const source = ts.createSourceFile('example.ts', text, ts.ScriptTarget.ES2023, true);
  const typed = source.statements.map((statement) => rewrite(statement, source, text)).join('\n');
  const { outputText } = ts.transpileModule(typed, {
    compilerOptions: { target: ts.ScriptTarget.ES2023, module: ts.ModuleKind.ESNext },
  });
  let compared = 0;
  const check = (value: unknown, promise: string) => {
    compare(value, promise);
    compared += 1;
  };
  const declared = new Set(
    source.statements.filter(ts.isImportDeclaration).flatMap(({ importClause }) => {
      const bindings = importClause?.namedBindings;
      return bindings && ts.isNamedImports(bindings)
        ? bindings.elements.map((e) => e.name.text)
        : [];
    }),
  );
  const given = Object.entries(names).filter(([name]) => !declared.has(name) && name !== 'default');
  const body = `{\n${outputText}\n}`;
  await new AsyncFunction(...given.map(([name]) => name), 'load', 'check', body)(
    ...given.map(([, value]) => value),
    load,
    check,
  );
  return compared;
}
