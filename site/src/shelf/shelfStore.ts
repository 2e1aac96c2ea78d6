import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { joinSensors, readSensor, type ShelfSensor } from './shelf.js';

interface ShelfSchema extends DBSchema {
  readonly sensors: { readonly key: string; readonly value: unknown };
}

const database = 'truesweep-shelf';
/** Raised with each change of what is stored; older pages then refuse it and say so. */
const version = 1;
const channel = 'truesweep-shelf';

/** Why the shelf could not be read or written. */
export type ShelfTrouble = 'blocked' | 'full' | 'newer';

/** What a try came to. */
export type Tried<Value> = { readonly value: Value } | { readonly trouble: ShelfTrouble };

/** What stands on the shelf: its sensors by name, and the entries that can't be read, as they are stored. */
export interface ShelfContent {
  readonly sensors: readonly ShelfSensor[];
  readonly damaged: readonly { readonly key: string; readonly stored: unknown }[];
}

/** All that stands on the shelf. */
export async function readAll(): Promise<Tried<ShelfContent>> {
  return await tried(async (db) => {
    const [keys, values] = await Promise.all([db.getAllKeys('sensors'), db.getAll('sensors')]);
    const read = keys.map((key, i) => ({ key, stored: values[i], sensor: readSensor(values[i]) }));
    const sensors = read.flatMap(({ sensor }) => (sensor ? [sensor] : []));
    return {
      sensors: sensors.sort((one, other) => one.name.localeCompare(other.name)),
      damaged: read.filter(({ sensor }) => !sensor).map(({ key, stored }) => ({ key, stored })),
    };
  });
}

/**
 * Changes one sensor, or puts a new one on the shelf: what another tab wrote meanwhile is read in the same step, so that neither's is lost.
 *
 * @param change Of the sensor as it is stored now; undefined where there is none. It returns what is to be stored.
 */
export async function changeSensor(
  id: string,
  change: (before: ShelfSensor | undefined) => ShelfSensor,
): Promise<Tried<ShelfSensor>> {
  return await tried(async (db) => {
    const step = db.transaction('sensors', 'readwrite');
    const after = change(readSensor(await step.store.get(id)));
    await Promise.all([step.store.put(after, id), step.done]);
    tellOthers();
    return after;
  });
}

/** Puts sensors from a file on the shelf, in one step: all of them, or none where there is no room. One that is there already is joined with its like. */
export async function addSensors(sensors: readonly ShelfSensor[]): Promise<Tried<number>> {
  return await tried(async (db) => {
    const step = db.transaction('sensors', 'readwrite');
    for (const sensor of sensors) {
      const before = readSensor(await step.store.get(sensor.id));
      await step.store.put(before ? joinSensors(before, sensor) : sensor, sensor.id);
    }
    await step.done;
    tellOthers();
    return sensors.length;
  });
}

/** Takes an entry off the shelf. */
export async function removeEntry(key: string): Promise<Tried<undefined>> {
  return await tried(async (db) => {
    await db.delete('sensors', key);
    tellOthers();
    return undefined;
  });
}

/** Calls back when another tab changed the shelf; returns how to stop that. */
export function followShelf(onChange: () => void): () => void {
  const listener = new BroadcastChannel(channel);
  listener.onmessage = onChange;
  return () => listener.close();
}

function tellOthers(): void {
  const teller = new BroadcastChannel(channel);
  teller.postMessage('changed');
  teller.close();
}

/** Opens the shelf for one step; a newer page that waits to change it is let in between two steps. */
async function tried<Value>(
  act: (db: IDBPDatabase<ShelfSchema>) => Promise<Value>,
): Promise<Tried<Value>> {
  let db: IDBPDatabase<ShelfSchema> | undefined;
  try {
    db = await openDB<ShelfSchema>(database, version, {
      upgrade: (opened) => {
        opened.createObjectStore('sensors');
      },
    });
    return { value: await act(db) };
  } catch (error) {
    return { trouble: troubleOf(error) };
  } finally {
    db?.close();
  }
}

function troubleOf(error: unknown): ShelfTrouble {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'VersionError') return 'newer';
  if (name === 'QuotaExceededError') return 'full';
  return 'blocked';
}
