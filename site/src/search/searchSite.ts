/** A page in which what was searched for stands. */
export interface FoundPage {
  readonly url: string;
  readonly title: string;
  readonly excerpt: string;
}

/** What the index, built with the site, offers. */
interface SearchIndex {
  search(wanted: string): Promise<{
    readonly results: readonly {
      data(): Promise<{
        readonly url: string;
        readonly meta: { readonly title?: string };
        readonly excerpt: string;
      }>;
    }[];
  }>;
}

/** No one reads on for longer. */
const most = 20;

/** Searches the pages below `base`, the best first. */
export async function searchSite(wanted: string, base: string): Promise<readonly FoundPage[]> {
  const index: SearchIndex = await import(/* @vite-ignore */ `${base}/pagefind/pagefind.js`);
  const { results } = await index.search(wanted);
  return await Promise.all(
    results.slice(0, most).map(async (result) => {
      const { url, meta, excerpt } = await result.data();
      return { url, title: meta.title ?? url, excerpt: textOf(excerpt) };
    }),
  );
}

/** The text of a piece of HTML, without its marks. */
function textOf(html: string): string {
  return new DOMParser().parseFromString(html, 'text/html').body.textContent ?? '';
}
