import type { Score, Verdict } from '@truesweep/core';
import { verdictLabels } from '@truesweep/wording';
import type { RestsOnRow } from '../checkSweep/protocol.js';

/** What a recording of a sensor came to. */
export interface ShelfResult {
  /** When it was judged, ISO 8601. */
  readonly at: string;
  /** The file's name and its hash, SHA-256. */
  readonly recording: string;
  readonly sha256: string;
  readonly verdict: Verdict;
  readonly said: string;
  /** What the verdict rests on. */
  readonly restsOn: readonly RestsOnRow[];
  /** All of the judgement, for comparisons. */
  readonly score: Score;
}

/** A sensor with its hook-up, as it is kept on the shelf. */
export interface ShelfSensor {
  /** Its own among all, and the same wherever it is carried. */
  readonly id: string;
  readonly name: string;
  readonly serial: string;
  readonly machine: string;
  readonly note: string;
  /** When it was last changed, ISO 8601. */
  readonly changedAt: string;
  /** What was entered of sensor, hook-up and instrument, by the names of the entries. */
  readonly texts: Readonly<Record<string, string>>;
  /** The results of its recordings, the oldest first. */
  readonly results: readonly ShelfResult[];
}

/** A shelf as a file holds it. */
export interface ShelfFile {
  readonly kind: 'truesweep-shelf';
  readonly version: 1;
  readonly sensors: readonly ShelfSensor[];
}

/** The version of shelf files that this page writes. */
export const shelfVersion = 1;

/** A sensor from whatever was stored; undefined where it is damaged. */
export function readSensor(given: unknown): ShelfSensor | undefined {
  if (!isRecord(given)) return undefined;
  const { id, name, serial, machine, note, changedAt, texts, results } = given;
  const words = [id, name, serial, machine, note, changedAt];
  if (!words.every((one) => typeof one === 'string') || id === '') return undefined;
  if (!isRecord(texts) || !Object.values(texts).every((one) => typeof one === 'string'))
    return undefined;
  if (!Array.isArray(results) || !results.every(isResult)) return undefined;
  return { id, name, serial, machine, note, changedAt, texts, results } as ShelfSensor;
}

function isResult(given: unknown): given is ShelfResult {
  if (!isRecord(given)) return false;
  const { at, recording, sha256, verdict, said, restsOn, score } = given;
  return (
    [at, recording, sha256, said].every((one) => typeof one === 'string') &&
    typeof verdict === 'string' &&
    Object.hasOwn(verdictLabels, verdict) &&
    Array.isArray(restsOn) &&
    restsOn.every(
      (row) =>
        Array.isArray(row) && row.length === 2 && row.every((one) => typeof one === 'string'),
    ) &&
    isRecord(score)
  );
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A shelf file read: its sensors and how many of its entries are damaged; or why it is none. */
export type ReadShelf =
  | { readonly sensors: readonly ShelfSensor[]; readonly damaged: number }
  | { readonly refusal: 'not-a-shelf' | 'newer' };

/** Reads a shelf from a file's text. */
export function readShelf(text: string): ReadShelf {
  let given: unknown;
  try {
    given = JSON.parse(text);
  } catch {
    return { refusal: 'not-a-shelf' };
  }
  if (!isRecord(given) || given.kind !== 'truesweep-shelf' || !Array.isArray(given.sensors))
    return { refusal: 'not-a-shelf' };
  if (typeof given.version !== 'number' || given.version > shelfVersion)
    return { refusal: 'newer' };
  const sensors = given.sensors.map(readSensor);
  const whole = sensors.filter((one) => one !== undefined);
  return { sensors: whole, damaged: sensors.length - whole.length };
}

/** A shelf as the text of a file. */
export function writeShelf(sensors: readonly ShelfSensor[]): string {
  const file: ShelfFile = { kind: 'truesweep-shelf', version: shelfVersion, sensors };
  return `${JSON.stringify(file, undefined, 1)}\n`;
}

/**
 * A sensor of the shelf and the same one from elsewhere as one: the fields of that changed last, and the results of both, each once.
 * Nothing that was judged is lost, whichever comes first.
 */
export function joinSensors(one: ShelfSensor, other: ShelfSensor): ShelfSensor {
  const isOlder = one.changedAt < other.changedAt;
  const [newer, older] = isOlder ? [other, one] : [one, other];
  const known = new Map(older.results.map((result) => [keyOf(result), result]));
  for (const result of newer.results) known.set(keyOf(result), result);
  const results = [...known.values()].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
  return { ...newer, results };
}

const keyOf = ({ at, sha256 }: ShelfResult): string => `${at} ${sha256}`;

/** A sensor with one more result; one of the same recording by the same values takes the place of the former. */
export function withResult(sensor: ShelfSensor, result: ShelfResult): ShelfSensor {
  const isSame = (other: ShelfResult) =>
    other.sha256 === result.sha256 &&
    JSON.stringify(other.restsOn) === JSON.stringify(result.restsOn);
  return { ...sensor, results: [...sensor.results.filter((one) => !isSame(one)), result] };
}
