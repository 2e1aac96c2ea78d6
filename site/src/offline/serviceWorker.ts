import { Serwist, StaleWhileRevalidate } from 'serwist';

/** The site's address, and below it what is kept from the first visit on: a line each, after a space what changes with it; put in when the site is built. */
declare const keptBelow: string;
declare const keptFiles: string;

/**
 * Keeps the site in the browser. A newer version waits until the page asks for it, so that no page ever meets files of
 * another version than its own.
 */
new Serwist({
  precacheEntries: keptFiles.split('\n').map((line) => {
    const [path, revision] = line.split(' ');
    return { url: keptBelow + path, revision: revision ?? null };
  }),
  precacheOptions: { cleanupOutdatedCaches: true, ignoreURLParametersMatching: [/.*/] },
  skipWaiting: false,
  clientsClaim: true,
  runtimeCaching: [
    {
      matcher: ({ sameOrigin }) => sameOrigin,
      handler: new StaleWhileRevalidate({ cacheName: 'looked-at' }),
    },
  ],
}).addEventListeners();
