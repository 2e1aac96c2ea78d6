import type { Stretch } from '@truesweep/core';
import type { Job, JobRecording } from '@truesweep/jobs';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** A recording as it is kept in the browser while it runs and until it is judged or saved; its samples are kept in pieces beside it. */
export interface KeptRecording {
  readonly id: string;
  /** When it was begun, ISO 8601. */
  readonly startedAt: string;
  /** Whether it was stopped; one that was not broke off. */
  readonly isWhole: boolean;
  /** Whether it was judged or saved. */
  readonly isHandedOn: boolean;
  readonly job: Job;
  readonly stretches: readonly Stretch[];
  /** How its text is read, or what a full-scale sample of its sound stands for. */
  readonly read: Pick<JobRecording, 'text' | 'sound'>;
  /** Samples a second, of a sound. */
  readonly rate?: number;
}

/** A piece of a recording: lines, or samples of a sound. */
export type Piece = string | Float32Array<ArrayBuffer>;

/** Why nothing is kept. */
export type KeepTrouble = 'blocked' | 'full';

interface Schema extends DBSchema {
  readonly recordings: { readonly key: string; readonly value: KeptRecording };
  /** By the recording and the number of the piece. */
  readonly pieces: { readonly key: [id: string, number: number]; readonly value: Piece };
}

/** Where recordings are kept, while it is open. */
export type RecordingStore = IDBPDatabase<Schema>;

/** Held while a recording runs. */
export const lockOf = (id: string): string => `truesweep-recording-${id}`;

/** Opens the place where recordings are kept. */
export async function openStore(): Promise<RecordingStore> {
  return await openDB<Schema>('truesweep-recordings', 1, {
    upgrade: (opened) => {
      opened.createObjectStore('recordings', { keyPath: 'id' });
      opened.createObjectStore('pieces');
    },
  });
}

/** Keeps a recording as it stands now, and its next piece, in one step. */
export async function putPiece(
  store: RecordingStore,
  recording: KeptRecording,
  piece?: { readonly number: number; readonly content: Piece },
): Promise<void> {
  const step = store.transaction(['recordings', 'pieces'], 'readwrite');
  await Promise.all([
    step.objectStore('recordings').put(recording),
    piece && step.objectStore('pieces').put(piece.content, [recording.id, piece.number]),
    step.done,
  ]);
}

const piecesOf = (id: string) => IDBKeyRange.bound([id, 0], [id, Number.POSITIVE_INFINITY]);

/** Lets go of the pieces of a recording that goes on. */
export async function removePieces(store: RecordingStore, id: string): Promise<void> {
  await store.delete('pieces', piecesOf(id));
}

/** What is kept of a recording; undefined where nothing is. */
export async function readRecording(
  id: string,
): Promise<{ readonly recording: KeptRecording; readonly pieces: readonly Piece[] } | undefined> {
  return await inStore(async (store) => {
    const recording = await store.get('recordings', id);
    return recording && { recording, pieces: await store.getAll('pieces', piecesOf(id)) };
  });
}

/** Recordings that nobody records now and that were neither judged nor saved, the latest first. */
export async function offeredRecordings(): Promise<readonly KeptRecording[]> {
  const { held = [] } = await navigator.locks.query();
  const running = new Set(held.map(({ name }) => name));
  const all = await inStore((store) => store.getAll('recordings'));
  return all
    .filter(({ id, isHandedOn }) => !isHandedOn && !running.has(lockOf(id)))
    .sort((one, other) => (one.startedAt < other.startedAt ? 1 : -1));
}

/** Says of a recording that it was judged or saved: it is offered no more, and goes with the next recording. */
export async function handOn(id: string): Promise<void> {
  await inStore(async (store) => {
    const step = store.transaction('recordings', 'readwrite');
    const recording = await step.store.get(id);
    if (recording) await step.store.put({ ...recording, isHandedOn: true });
    await step.done;
  });
}

/** Throws a recording away. */
export async function throwAway(id: string): Promise<void> {
  await inStore((store) => remove(store, id));
}

/** Throws away what was judged or saved before. */
export async function throwHandedOn(store: RecordingStore): Promise<void> {
  for (const { id, isHandedOn } of await store.getAll('recordings'))
    if (isHandedOn) await remove(store, id);
}

async function remove(store: RecordingStore, id: string): Promise<void> {
  const step = store.transaction(['recordings', 'pieces'], 'readwrite');
  await Promise.all([
    step.objectStore('recordings').delete(id),
    step.objectStore('pieces').delete(piecesOf(id)),
    step.done,
  ]);
}

async function inStore<Value>(act: (store: RecordingStore) => Promise<Value>): Promise<Value> {
  const store = await openStore();
  try {
    return await act(store);
  } finally {
    store.close();
  }
}

/** Why a step of the storage failed. */
export function keepTroubleOf(error: unknown): KeepTrouble {
  const isFull = error instanceof DOMException && error.name === 'QuotaExceededError';
  return isFull ? 'full' : 'blocked';
}
