/// <reference types="astro/client" />
import { foundSentence, searchWords } from '@truesweep/wording';
import { useEffect, useState } from 'preact/hooks';
import { type FoundPage, searchSite } from './searchSite.js';

/** How long the hand rests before the index is asked, ms. */
const askAfter = 250;

/** What is searched for: it stands in the page's address. */
interface Wanted {
  readonly text: string;
  readonly inLibrary: boolean;
}

interface FoundPages {
  readonly bench: readonly FoundPage[];
  /** Left out where the library is not searched. */
  readonly library?: readonly FoundPage[];
}

/** Searches the pages of the site in the browser: those for the bench and, where it is asked for, the library by itself. */
export function SiteSearch() {
  const [wanted, setWanted] = useState<Wanted>({ text: '', inLibrary: false });
  const [found, setFound] = useState<FoundPages>();

  useEffect(() => setWanted(fromAddress()), []);

  useEffect(() => {
    let isCurrent = true;
    const timer = setTimeout(async () => {
      if (wanted.text.trim() === '') return setFound(undefined);
      history.replaceState(history.state, '', addressOf(wanted));
      const pages = await searchParts(wanted);
      if (isCurrent) setFound(pages);
    }, askAfter);
    return () => {
      isCurrent = false;
      clearTimeout(timer);
    };
  }, [wanted]);

  return (
    <div class="readings not-content">
      <search class="search-form">
        <label for="wanted">{searchWords.wanted}</label>
        <input
          id="wanted"
          type="search"
          value={wanted.text}
          onInput={(event) => setWanted({ ...wanted, text: event.currentTarget.value })}
        />
        <label class="search-library">
          <input
            type="checkbox"
            checked={wanted.inLibrary}
            onInput={(event) => setWanted({ ...wanted, inLibrary: event.currentTarget.checked })}
          />
          {searchWords.alsoLibrary}
        </label>
      </search>
      <p role="status">
        {found && foundSentence(found.bench.length + (found.library?.length ?? 0))}
      </p>
      {found && <FoundList pages={found.bench} />}
      {found?.library && (
        <>
          <h2>{searchWords.inLibrary}</h2>
          {found.library.length > 0 ? (
            <FoundList pages={found.library} />
          ) : (
            <p>{searchWords.notInLibrary}</p>
          )}
        </>
      )}
    </div>
  );
}

function FoundList({ pages }: { readonly pages: readonly FoundPage[] }) {
  return (
    <ul class="found">
      {pages.map(({ url, title, about }) => (
        <li key={url}>
          <a href={url}>{title}</a>
          <p>{about}</p>
        </li>
      ))}
    </ul>
  );
}

async function searchParts({ text, inLibrary }: Wanted): Promise<FoundPages> {
  const base = import.meta.env.BASE_URL.replace(/\/$/, '');
  const bench = await searchSite(text, 'bench', base);
  if (!inLibrary && bench.length > 0) return { bench };
  const library = await searchSite(text, 'library', base);
  // What the bench's pages have nothing of is told by the library unasked, if it has.
  return inLibrary || library.length > 0 ? { bench, library } : { bench };
}

function fromAddress(): Wanted {
  const fields = new URLSearchParams(location.search);
  return { text: fields.get('q') ?? '', inLibrary: fields.has('library') };
}

function addressOf({ text, inLibrary }: Wanted): string {
  return `?${new URLSearchParams({ q: text, ...(inLibrary && { library: '' }) })}`;
}
