import type { Keeping } from '../forms/keeping.js';
import { emptyWay, readWay, type Way } from './way.js';

const key = 'truesweep-way';

/** Keeps the way in the browser's own storage. */
export interface WayStore {
  readonly read: () => Way;
  readonly change: (change: (before: Way) => Way) => void;
  readonly follow: (onChange: () => void) => () => void;
}

/** Opens what was kept; where nothing can be kept, as in some private windows, it lives as long as the page. */
export function wayStore(): WayStore {
  let way = readStored() ?? emptyWay;
  const followers = new Set<() => void>();
  return {
    read: () => way,
    change: (change) => {
      way = change(way);
      try {
        localStorage.setItem(key, JSON.stringify(way));
      } catch {
        // The page says that it keeps in this browser; one that can't keeps nothing for any page.
      }
      for (const follower of followers) follower();
    },
    follow: (onChange) => {
      followers.add(onChange);
      return () => followers.delete(onChange);
    },
  };
}

function readStored(): Way | undefined {
  try {
    const stored = localStorage.getItem(key);
    const read = stored === null ? undefined : readWay(stored);
    return read && 'way' in read ? read.way : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps the entries of one step's form in the way; entries of the same name in other steps follow. */
export function inWay(store: WayStore, names: readonly string[]): Keeping {
  const own = (texts: Way['texts'], isOwn: boolean) =>
    Object.fromEntries(Object.entries(texts).filter(([name]) => names.includes(name) === isOwn));
  return {
    read: () => ({ texts: own(store.read().texts, true) }),
    write: (changed) =>
      store.change((before) => ({
        ...before,
        texts: { ...own(before.texts, false), ...changed },
      })),
    follow: store.follow,
  };
}
