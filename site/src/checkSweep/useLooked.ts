import { useEffect, useState } from 'preact/hooks';
import type { Chosen } from './basis.js';
import type { Looked } from './Looked.js';
import type { Look, ReadBy } from './protocol.js';
import { lookInto } from './sweepWorker.js';

/** The width that the small drawings are made for, px; they are shown as wide as there is room. */
const drawnWidth = 340;

interface Found {
  readonly looks: readonly Look[];
  /** Shows them; its code is fetched with the first look, since a job says how its recordings are read. Left out where it can't be fetched: they are judged without. */
  readonly Looked?: typeof Looked;
}

/** Looks into chosen recordings that no job says how to read; undefined while nothing is chosen or not yet looked at. */
export function useLooked(chosen: Chosen | undefined, read: ReadBy): Found | undefined {
  const [found, setFound] = useState<Found & { readonly of: Chosen }>();
  const told = JSON.stringify(read);
  useEffect(() => {
    if (chosen?.kind !== 'recordings') return;
    let isOver = false;
    const code = import('./Looked.js').catch(() => {});
    const show = (looks: readonly Look[]) =>
      void code.then((one) => {
        if (!isOver) setFound({ of: chosen, looks, ...one });
      });
    // Without a worker nothing is judged either, and that is said.
    let end = () => {};
    try {
      end = lookInto(chosen.files, read, drawnWidth, show);
    } catch {
      show([]);
    }
    return () => {
      isOver = true;
      end();
    };
  }, [chosen, told]);
  return chosen && found?.of === chosen ? found : undefined;
}
