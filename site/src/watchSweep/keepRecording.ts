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

  const put = async (content: Piece | undefined): Promise<void> => {
    const opened = await store;
    try {
      if (opened && !isTroubled) {
        await putPiece(
          opened,
          standing(),
          content === undefined ? undefined : { number: written, content },
        );
        written += 1;
        return;
      }
    } catch (error) {
      trouble(error);
    }
    if (content !== undefined) held.push(content);
  };
  // One after the other, so that pieces keep their order.
  const queue = (step: () => Promise<void>): Promise<void> => {
    last = last.then(step);
    return last;
  };
  const timer = setInterval(() => {
    const content = takeNext();
    if (content !== undefined) void queue(() => put(content));
  }, 1000 * pieceSeconds);
  return {
    /** Lets go of all pieces: the recording begins anew. */
    restart(): void {
      void queue(async () => {
        held.length = 0;
        const opened = await store;
        // Full as it may be: what is removed makes room, and must not mix with what comes.
        if (opened) await removePieces(opened, id).catch(trouble);
      });
    },
    /** Puts the rest away. Returns what could not be put away: of all pieces the last ones. */
    async end(): Promise<readonly Piece[]> {
      clearInterval(timer);
      const content = takeNext();
      await queue(() => put(content));
      (await store)?.close();
      return held;
    },
  };
}
