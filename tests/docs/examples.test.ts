import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { runExample } from './runExample.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const files = globSync('packages/*/src/**/*.{ts,tsx}', { cwd: root }).filter(
  (file) => !/\.test\.tsx?$/.test(file),
);

interface Example {
  readonly of: string;
  readonly text: string;
}

/** Every `@example` of a file, with the name of what it documents. */
function examples(file: string): Example[] {
  const source = ts.createSourceFile(file, readFileSync(join(root, file), 'utf8'), 99, true);
  const found: Example[] = [];
  const visit = (node: ts.Node) => {
    for (const tag of ts.getJSDocTags(node)) {
      if (tag.tagName.text !== 'example' || tag.parent.parent !== node) continue;
      const comment = ts.getTextOfJSDocComment(tag.comment) ?? '';
      const name = ts.isVariableStatement(node)
        ? node.declarationList.declarations[0]!.name
        : ts.getNameOfDeclaration(node as ts.Declaration);
      found.push({
        of: name?.getText(source) ?? file,
        text: comment.replace(/^```\w*\n|\n```$/g, ''),
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const documented = files
  .map((file) => ({ file, found: examples(file) }))
  .filter(({ found }) => found.length > 0);

describe.each(documented)('$file', ({ file, found }) => {
  test.each(found)('the example of $of runs and gives what it says', async ({ text }) => {
    const entry = join(root, file.split(/[\\/]/).slice(0, 3).join('/'), 'index.ts');
    const names = { ...(await import(entry)), ...(await import(join(root, file))) };
    expect(await runExample(text, names), 'a value behind `// =>` was compared').toBeGreaterThan(0);
  });
});
