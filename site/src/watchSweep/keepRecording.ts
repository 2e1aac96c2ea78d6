import type { Seconds } from '@truesweep/core';
import {
  type KeepTrouble,
  type KeptRecording,
  keepTroubleOf,
  lockOf,
  openStore,
  type Piece,
  putPiece,
  type RecordingStore,
  removePieces,
  throwHandedOn,
} from './recordingStore.js';

/** Pieces are put away so often; with what a step takes no more than the last second is lost: s. */
const pieceSeconds: Seconds = 0.7;

/**
 * Keeps a recording in the browser's storage while it runs. Where that can't be it is held in memory until its end, and said once.
 *
 * @param standing The recording as it stands now.
 * @param takeNext What came since it was asked last; undefined where nothing did.
 */
export function keepRecording(
  id: string,
  standing: () => KeptRecording,
  takeNext: () => Piece | undefined,
  onTrouble: (trouble: KeepTrouble) => void,
) {
  const held: Piece[] = [];
  let isTroubled = false;
  let written = 0;
  let last: Promise<void> = Promise.resolve();
  // Held as long as the worker lives: other pages then offer nothing that still runs.
  if ('locks' in navigator) void navigator.locks.request(lockOf(id), () => new Promise(() => {}));
  const store: Promise<RecordingStore | undefined> = openStore()
    .then(async (opened) => {
      await throwHandedOn(opened);
      return opened;
    })
    .catch((error: unknown) => trouble(error));

  function trouble(error: unknown): undefined {
    if (!isTroubled) onTrouble(keepTroubleOf(error));
    isTroubled = true;
    return undefined;
  }

  const put = async (isLast: boolean): Promise<void> => {
    const content = takeNext();
    if (content !== undefined) held.push(content);
    const opened = await store;
    if (!opened || isTroubled || (held.length === 0 && !isLast)) return;
    try {
      while (held.length > 0) {
        await putPiece(opened, standing(), { number: written, content: held[0]! });
        written += 1;
        held.shift();
      }
      if (isLast) await putPiece(opened, standing());
    } catch (error) {
      trouble(error);
    }
  };
  // One after the other, so that pieces keep their order.
  const putNext = (isLast = false): Promise<void> => {
    last = last.then(() => put(isLast));
    return last;
  };
  const timer = setInterval(() => void putNext(), 1000 * pieceSeconds);
  return {
    /** Lets go of all pieces: the recording begins anew. */
    restart(): void {
      last = last.then(async () => {
        held.length = 0;
        const opened = await store;
        if (opened && !isTroubled) await removePieces(opened, id).catch(trouble);
      });
    },
    /** Puts the rest away. Returns what could not be put away: of all pieces the last ones. */
    async end(): Promise<readonly Piece[]> {
      clearInterval(timer);
      await putNext(true);
      (await store)?.close();
      return held;
    },
  };
}
