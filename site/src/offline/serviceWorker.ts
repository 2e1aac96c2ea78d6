import { type PrecacheEntry, Serwist, StaleWhileRevalidate } from 'serwist';

/** What is kept from the first visit on; put in when the site is built. */
declare const precacheEntries: PrecacheEntry[];

/**
 * Keeps the site in the browser. A newer version waits until the page asks for it, so that no page ever meets files of
 * another version than its own.
 */
new Serwist({
  precacheEntries,
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
