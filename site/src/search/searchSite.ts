/** A page in which what was searched for stands, or a place in one. */
export interface FoundPage {
  readonly url: string;
  readonly title: string;
  /** What the page is for, or what stands at the place. */
  readonly about: string;
}

/** Which pages are searched: those for the bench, with guides, calculators and formulas, or the library's reference. */
export type Part = 'bench' | 'library';

interface Found {
  readonly url: string;
  readonly excerpt: string;
  readonly meta: { readonly title?: string; readonly about?: string };
  /** Headings of the page with what was found below them. */
  readonly sub_results: readonly {
    readonly url: string;
    readonly title: string;
    readonly excerpt: string;
  }[];
}

/** What the index, built with the site, offers. */
interface SearchIndex {
  search(
    wanted: string,
    options: { readonly filters: { readonly part: Part } },
  ): Promise<{ readonly results: readonly { data(): Promise<Found> }[] }>;
}

/** No one reads on for longer. */
const most = 20;

/** Searches one part of the pages below `base`, the best first. */
export async function searchSite(
  wanted: string,
  part: Part,
  base: string,
): Promise<readonly FoundPage[]> {
  const index: SearchIndex = await import(/* @vite-ignore */ `${base}/pagefind/pagefind.js`);
  const { results } = await index.search(wanted, { filters: { part } });
  const found = await Promise.all(results.slice(0, most).map((result) => result.data()));
  return (part === 'bench' ? found.map(asPage) : found.flatMap(asPlaces)).slice(0, most);
}

function asPage({ url, meta, excerpt }: Found): FoundPage {
  return { url, title: meta.title ?? url, about: meta.about ?? textOf(excerpt) };
}

/** A page of the reference holds many names: each that was found leads to its own place. */
function asPlaces(found: Found): readonly FoundPage[] {
  const page = asPage(found);
  return found.sub_results.map(({ url, title, excerpt }) => ({
    url,
    title: title === page.title ? title : `${title} (${page.title})`,
    about: textOf(excerpt),
  }));
}

/** The text of a piece of HTML, without its marks. */
function textOf(html: string): string {
  return new DOMParser().parseFromString(html, 'text/html').body.textContent ?? '';
}
