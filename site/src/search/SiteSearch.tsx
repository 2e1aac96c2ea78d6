/// <reference types="astro/client" />
import { foundSentence, searchWords } from '@truesweep/wording';
import { useEffect, useState } from 'preact/hooks';
import { type FoundPage, searchSite } from './searchSite.js';

/** How long the hand rests before the index is asked, ms. */
const askAfter = 250;

/** Searches the pages of the site in the browser; what is searched for stands in the address. */
export function SiteSearch() {
  const [wanted, setWanted] = useState('');
  const [found, setFound] = useState<readonly FoundPage[]>();

  useEffect(() => setWanted(new URLSearchParams(location.search).get('q') ?? ''), []);

  useEffect(() => {
    let isCurrent = true;
    const timer = setTimeout(async () => {
      if (wanted.trim() === '') return setFound(undefined);
      history.replaceState(history.state, '', `?${new URLSearchParams({ q: wanted })}`);
      const pages = await searchSite(wanted, import.meta.env.BASE_URL.replace(/\/$/, ''));
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
          value={wanted}
          onInput={(event) => setWanted(event.currentTarget.value)}
        />
      </search>
      <p role="status">{found && foundSentence(found.length)}</p>
      <ul class="found">
        {found?.map(({ url, title, excerpt }) => (
          <li key={url}>
            <a href={url}>{title}</a>
            <p>{excerpt}</p>
          </li>
        ))}
      </ul>
    </div>
  );
}
