import { escaped } from './code.js';

/** Where a name of the library is documented; undefined for one that is not public. */
export type HrefOf = (name: string) => string | undefined;

/** The text of a doc comment as HTML: paragraphs, code between backticks, and links to names. */
export function proseHtml(text: string, hrefOf: HrefOf): string {
  return text
    .split(/\n\s*\n/)
    .filter((paragraph) => paragraph.trim() !== '')
    .map((paragraph) => `<p>${inlineHtml(paragraph, hrefOf)}</p>`)
    .join('');
}

/** One paragraph of a doc comment as HTML. */
export function inlineHtml(text: string, hrefOf: HrefOf): string {
  return text
    .trim()
    .replace(/\s+/g, ' ')
    .split(/(`[^`]+`|\{@link [^}]+\})/)
    .map((piece) => {
      const link = /^\{@link\s+(\w+)\s*\}$/.exec(piece)?.[1];
      const name = link ?? /^`([^`]+)`$/.exec(piece)?.[1];
      if (name === undefined) return escaped(piece);
      const href = link && hrefOf(link);
      const code = `<code>${escaped(name)}</code>`;
      return href ? `<a href="${href}">${code}</a>` : code;
    })
    .join('');
}

/** The first sentence of a doc comment as HTML. */
export function firstSentenceHtml(text: string, hrefOf: HrefOf): string {
  const paragraph = text.replace(/\n\s*\n[\s\S]*/, '').replace(/\s+/g, ' ');
  return inlineHtml(/^.*?[.!?](?=\s[A-Z]|$)/.exec(paragraph)?.[0] ?? paragraph, hrefOf);
}
