import { useEffect, useState } from 'preact/hooks';
import type { Chosen } from './basis.js';
import type { Look, ReadBy } from './protocol.js';
import { lookInto } from './sweepWorker.js';

/** The width that the small drawings are made for, px; they are shown as wide as there is room. */
const drawnWidth = 340;

/** Looks into chosen recordings that no job says how to read; undefined while nothing is chosen or not yet looked at. */
export function useLooked(chosen: Chosen | undefined, read: ReadBy): readonly Look[] | undefined {
  const [found, setFound] = useState<{
    readonly of: Chosen;
    readonly looks: readonly Look[];
  }>();
  const told = JSON.stringify(read);
  useEffect(() => {
    if (chosen?.kind !== 'recordings') return;
    try {
      return lookInto(chosen.files, read, drawnWidth, (looks) => setFound({ of: chosen, looks }));
    } catch {
      // Without a worker nothing is judged either, and that is said.
      setFound({ of: chosen, looks: [] });
    }
  }, [chosen, told]);
  return chosen && found?.of === chosen ? found.looks : undefined;
}
