import { say } from './say.js';

/**
 * Words of the search.
 *
 * @example
 * searchWords.search // => 'Search'
 */
export const searchWords = {
  search: 'Search',
  wanted: 'Search the pages for',
  alsoLibrary: 'Search the library too',
  inLibrary: 'In the library',
  notInLibrary: 'The library has nothing of that.',
} as const satisfies Record<string, string>;

/**
 * How many pages, or places in them, were found.
 *
 * @example
 * foundSentence(0) // => 'No page has that.'
 * foundSentence(2) // => '2 pages, the best first.'
 */
export function foundSentence(pages: number): string {
  if (pages === 0) return 'No page has that.';
  return pages === 1 ? 'One page.' : say`${pages} pages, the best first.`;
}
