import type { Keeping } from '../forms/keeping.js';
import { carryMeasured } from './takeOver.js';
import { emptyWay, readWay, type Way } from './way.js';

const key = 'truesweep-way';

/** Why nothing is kept: the storage takes nothing, or it holds what a newer version of the page kept. */
export type NotKept = 'blocked-or-full' | 'newer';

/** Keeps the way in the browser's own storage. */
export interface WayStore {
  readonly read: () => Way;
  readonly change: (change: (before: Way) => Way) => void;
  /** Empties it, also of what a newer version kept. */
  readonly forget: () => void;
  /** Why nothing is kept; undefined where it is. */
  readonly notKept: () => NotKept | undefined;
  readonly follow: (onChange: () => void) => () => void;
}

/** Opens what was kept; where nothing can be kept, as in some private windows, it lives as long as the page and that is told. */
export function wayStore(): WayStore {
  let way = emptyWay;
  let notKept: NotKept | undefined;
  const followers = new Set<() => void>();

  /** Takes what is stored, which another tab may have changed; each tab stays at its own step. */
  const take = (isOpening: boolean): void => {
    try {
      const stored = localStorage.getItem(key);
      if (stored === null) return;
      const read = readWay(stored);
      if ('way' in read) way = { ...read.way, step: isOpening ? read.way.step : way.step };
      else if (read.isNewer) notKept = 'newer';
    } catch {
      notKept = 'blocked-or-full';
    }
  };
  const keep = (changed: Way): void => {
    way = changed;
    if (notKept !== 'newer') {
      try {
        localStorage.setItem(key, JSON.stringify(way));
        notKept = undefined;
      } catch {
        notKept = 'blocked-or-full';
      }
    }
    for (const follower of followers) follower();
  };

  take(true);
  addEventListener('storage', (event) => {
    if (event.key !== null && event.key !== key) return;
    if (event.newValue === null) way = { ...emptyWay, step: way.step };
    take(false);
    for (const follower of followers) follower();
  });
  return {
    read: () => way,
    change: (change) => {
      // What is not kept is newer than what is stored.
      if (!notKept) take(false);
      keep(change(way));
    },
    forget: () => {
      notKept = undefined;
      keep(emptyWay);
    },
    notKept: () => notKept,
    follow: (onChange) => {
      followers.add(onChange);
      return () => followers.delete(onChange);
    },
  };
}

/** Keeps the entries of one step's form in the way; entries of the same name in other steps follow, and so does what is measured. */
export function inWay(store: WayStore, names: readonly string[]): Keeping {
  const own = (texts: Way['texts'], isOwn: boolean) =>
    Object.fromEntries(Object.entries(texts).filter(([name]) => names.includes(name) === isOwn));
  return {
    read: () => ({ texts: own(store.read().texts, true) }),
    write: (changed) =>
      store.change((before) => ({
        ...before,
        texts: carryMeasured(before.texts, { ...own(before.texts, false), ...changed }),
      })),
    follow: store.follow,
  };
}
