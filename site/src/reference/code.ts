import type { HrefOf } from './prose.js';

/** Text that stands in HTML as it is. */
export function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** Comments, texts and capitalised names, the pieces of a declaration that are more than letters. */
const pieces = /(\/\*[\s\S]*?\*\/|\/\/.*|'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`|\b[A-Z]\w*\b)/;

/** A declaration as HTML, the types in it leading to where they are documented. */
export function declarationHtml(code: string, hrefOf: HrefOf): string {
  return code
    .split(pieces)
    .map((piece) => {
      if (/^\/[*/]/.test(piece)) return `<i>${escaped(remark(piece))}</i>`;
      const href = /^[A-Z]/.test(piece) ? hrefOf(piece) : undefined;
      return href ? `<a href="${href}">${piece}</a>` : escaped(piece);
    })
    .join('');
}

/** A comment in one line, without the signs of a doc comment. */
function remark(comment: string): string {
  const doc = /^\/\*[\s*]*([\s\S]*?)[\s*]*\*\/$/.exec(comment)?.[1];
  return doc === undefined ? comment : `// ${doc.replace(/\s*\n[\s*]*/g, ' ')}`;
}

/** An example as HTML, its comments set apart. */
export function exampleHtml(code: string): string {
  return declarationHtml(code, () => undefined);
}
