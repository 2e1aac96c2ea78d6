import { formWords, unknownEntriesSentence } from '@truesweep/wording';
import type { Keeping, Kept } from './keeping.js';

const version = 1;

/** No entry is written longer; a link's text beyond it is cut off, and refused beside its field. */
const longestText = 100;

/** Writes what stands in a form as the fragment of an address: it stays in the browser, no server is told of it. */
export function writeAddress(changed: Readonly<Record<string, string>>): string {
  const entries = new URLSearchParams(changed).toString();
  return `#v${version}${entries && `&${entries}`}`;
}

/** Reads a fragment; undefined where it holds no entries, such as that of a heading. */
export function readAddress(fragment: string, names: readonly string[]): Kept | undefined {
  const [, written, rest] = /^#v(\d+)(?:&(.*))?$/s.exec(fragment) ?? [];
  if (written === undefined) return undefined;
  if (Number(written) > version) return { texts: {}, notice: formWords.newerLink };
  const texts: Record<string, string> = {};
  const unknown: string[] = [];
  for (const [name, text] of new URLSearchParams(rest ?? '')) {
    if (names.includes(name)) texts[name] = text.slice(0, longestText);
    else unknown.push(name.slice(0, longestText));
  }
  return { texts, ...(unknown.length > 0 && { notice: unknownEntriesSentence(unknown) }) };
}

/** Keeps a form with these entries in the page's address. */
export function inAddress(names: readonly string[]): Keeping {
  return {
    read: () => readAddress(location.hash, names),
    write: (changed) => {
      const fragment = Object.keys(changed).length > 0 ? writeAddress(changed) : '';
      history.replaceState(history.state, '', `${location.pathname}${location.search}${fragment}`);
    },
    follow: (onChange) => {
      addEventListener('hashchange', onChange);
      return () => removeEventListener('hashchange', onChange);
    },
    link: writeAddress,
  };
}
