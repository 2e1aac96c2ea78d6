/// <reference types="astro/client" />
import { useEffect, useState } from 'preact/hooks';

/** Asks the waiting service worker to take over; the message that its library listens for. */
const takeOver = { type: 'SKIP_WAITING' };

/**
 * Keeps the site for use without a connection.
 *
 * @returns How to change to a newer version, once one waits.
 */
export function useNewerVersion(): (() => void) | undefined {
  const [waiting, setWaiting] = useState<ServiceWorker>();
  useEffect(() => {
    // Without it, as in a private window, the site works as long as there is a connection.
    void follow(setWaiting).catch(() => undefined);
  }, []);
  return waiting && (() => waiting.postMessage(takeOver));
}

async function follow(onWaiting: (waiting: ServiceWorker) => void): Promise<void> {
  const workers = navigator.serviceWorker;
  if (!workers) return;
  const hadOne = workers.controller !== null;
  workers.addEventListener('controllerchange', () => {
    if (hadOne) location.reload();
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
