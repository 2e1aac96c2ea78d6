/// <reference types="astro/client" />
import { useEffect, useState } from 'preact/hooks';
import { followHolding, holdsRecordings } from './held.js';

/** Asks the waiting service worker to take over; the message that its library listens for. */
const takeOver = { type: 'SKIP_WAITING' };

/** What this tab asked for itself. */
let isAsked = false;

/** A newer version of the site: it waits, or another tab changed to it while this one holds what would be lost. */
export interface NewerVersion {
  readonly state: 'waits' | 'changed-elsewhere';
  /** Whether recordings are held, which the change would lose. */
  readonly holds: boolean;
  /** Changes to it, or loads the page anew. */
  readonly change: () => void;
}

/** Keeps the site for use without a connection; tells of a newer version once there is one. */
export function useNewerVersion(): NewerVersion | undefined {
  const [waiting, setWaiting] = useState<ServiceWorker>();
  const [isChanged, setChanged] = useState(false);
  const [holds, setHolds] = useState(false);
  useEffect(() => {
    // Without it, as in a private window, the site works as long as there is a connection.
    void follow(setWaiting, () => setChanged(true)).catch(() => undefined);
    setHolds(holdsRecordings());
    return followHolding(() => setHolds(holdsRecordings()));
  }, []);
  if (isChanged) return { state: 'changed-elsewhere', holds, change: () => location.reload() };
  return (
    waiting && {
      state: 'waits',
      holds,
      change: () => {
        isAsked = true;
        waiting.postMessage(takeOver);
      },
    }
  );
}

async function follow(
  onWaiting: (waiting: ServiceWorker) => void,
  onChanged: () => void,
): Promise<void> {
  const workers = navigator.serviceWorker;
  if (!workers) return;
  // The first worker that takes over is no newer version.
  let hadOne = workers.controller !== null;
  workers.addEventListener('controllerchange', () => {
    if (!hadOne) hadOne = true;
    else if (isAsked || !holdsRecordings()) location.reload();
    else onChanged();
  });
  const registration = await workers.register(
    `${import.meta.env.BASE_URL.replace(/\/$/, '')}/service-worker.js`,
  );
  const look = () => {
    if (registration.waiting && workers.controller) onWaiting(registration.waiting);
  };
  look();
  registration.addEventListener('updatefound', () =>
    registration.installing?.addEventListener('statechange', look),
  );
}
