import { historyPageWords } from '@truesweep/wording';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { ShelfTrouble } from '../shelf/shelfStore.js';
import type { Answered, Asked } from './historyProtocol.js';
import type { SensorView } from './sensorView.js';

/** What the page knows of the records it was given. */
export interface History {
  /** What is being done; nothing while all is done. */
  readonly busy?: string | undefined;
  readonly list?: Extract<Answered, { kind: 'list' }> | undefined;
  readonly view?: SensorView | undefined;
  /** Why nothing more can be worked out. */
  readonly broken?: string | undefined;
  readonly shelfTrouble?: ShelfTrouble | undefined;
  /** How many entries of the shelf can't be read. */
  readonly damagedOnShelf: number;
  readonly openFiles: (files: readonly File[]) => void;
  readonly forgetFiles: () => void;
  readonly choose: (sensor: string) => void;
}

/** Reads the shelf, and files that are given, in a worker that is started once there is something to read. */
export function useHistory(): History {
  const [state, setState] = useState<Omit<History, 'openFiles' | 'forgetFiles' | 'choose'>>({
    damagedOnShelf: 0,
  });
  const worker = useRef<Worker>();
  const chosen = useRef<string>();
  const set = (next: Partial<History>) => setState((before) => ({ ...before, ...next }));

  const ask = (asked: Asked) => {
    try {
      worker.current ??= startWorker();
      worker.current.postMessage(asked);
    } catch {
      set({ broken: historyPageWords.noWorker, busy: undefined });
    }
  };
  const startWorker = () => {
    const started = new Worker(new URL('./history.worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = ({ data }: MessageEvent<Answered>) => take(data);
    started.onerror = () => {
      // What is shown stays; the records are gone with the worker.
      worker.current = undefined;
      set({ broken: historyPageWords.brokenOff, busy: undefined });
    };
    return started;
  };
  const take = (answered: Answered) => {
    if (answered.kind === 'computing') return set({ busy: historyPageWords.computing });
    if (answered.kind === 'sensor') return set({ view: answered.view });
    const { sensors } = answered;
    const isThere = sensors.some(({ sensor }) => sensor === chosen.current);
    // There is nothing to choose from one.
    const next = isThere ? chosen.current : sensors.length === 1 ? sensors[0]?.sensor : undefined;
    chosen.current = next;
    set({ list: answered, busy: undefined, broken: undefined, ...(!next && { view: undefined }) });
    if (next !== undefined) ask({ kind: 'choose', sensor: next });
  };

  useEffect(() => {
    let stop = () => {};
    let isOver = false;
    let hadSome = false;
    void import('../shelf/shelfStore.js').then(({ followShelf, readAll }) => {
      const read = async () => {
        const tried = await readAll();
        if (isOver) return;
        if ('trouble' in tried) return set({ shelfTrouble: tried.trouble });
        const { sensors, damaged } = tried.value;
        set({ shelfTrouble: undefined, damagedOnShelf: damaged.length });
        const withResults = sensors.filter(({ results }) => results.length > 0);
        if (withResults.length > 0 || hadSome) ask({ kind: 'shelf', sensors: withResults });
        hadSome = withResults.length > 0;
      };
      if (isOver) return;
      stop = followShelf(read);
      void read();
    });
    return () => {
      isOver = true;
      stop();
      worker.current?.terminate();
    };
  }, []);

  return {
    ...state,
    openFiles: (files) => {
      if (files.length === 0) return;
      set({ busy: historyPageWords.reading });
      ask({ kind: 'files', files });
    },
    forgetFiles: () => ask({ kind: 'forget' }),
    choose: (sensor) => {
      chosen.current = sensor;
      ask({ kind: 'choose', sensor });
    },
  };
}
