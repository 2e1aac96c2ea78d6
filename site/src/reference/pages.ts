import { root } from 'astro:config/server';
import { fileURLToPath } from 'node:url';
import type { HrefOf } from './prose.js';
import { type EntryPage, readReference } from './readReference.js';

/** The address of the reference, with a slash at its end. */
export const reference = `${import.meta.env.BASE_URL.replace(/\/$/, '')}/reference/`;

/** The pages of the reference, read once for all of them. */
export const pages: readonly EntryPage[] = readReference(fileURLToPath(new URL('..', root)));

const places = new Map<string, string>();
for (const { library, own } of pages)
  for (const { exports } of own)
    for (const { name, place } of exports) {
      places.set(`${library.name} ${name}`, place);
      // Of names in several packages those of the first, core, are meant elsewhere.
      if (!places.has(name)) places.set(name, place);
    }

/** Where the names that a package's pages speak of are documented; within one of them, its place in it. */
export function hrefIn(library: string, path?: string): HrefOf {
  return (name) => {
    const place = places.get(`${library} ${name}`) ?? places.get(name);
    if (place === undefined) return undefined;
    return place.startsWith(`${path}/#`) ? `#${name}` : reference + place;
  };
}
