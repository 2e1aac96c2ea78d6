import { checkText } from '@truesweep/core';

/**
 * Controls (ECMA-48), marks that turn the direction of text, line and paragraph separators, halves of characters, and what has no
 * width. Joiners and variation selectors stay: words and pictures need them.
 */
const unseen =
  /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\p{Bidi_Control}\u00ad\u200b\u2060-\u2064\ufeff\ufff9-\ufffb\u{e0000}-\u{e007f}]/gu;

/**
 * A text of others as it may stand on a terminal or a page: what these would act on instead of showing it is written out, as in JSON.
 * Of JSON the data stay the same.
 *
 * @param kept Characters that stay as they are, such as the ends of lines of a whole text.
 *
 * @example
 * visibleText('port\u001b[2J.csv') // => 'port\\u001b[2J.csv'
 */
export function visibleText(text: string, kept = ''): string {
  checkText(text, 'text');
  checkText(kept, 'kept');
  return text.replace(unseen, (found) => (kept.includes(found) ? found : writtenOut(found)));
}

function writtenOut(character: string): string {
  let text = '';
  for (let i = 0; i < character.length; i++)
    text += `\\u${character.charCodeAt(i).toString(16).padStart(4, '0')}`;
  return text;
}
