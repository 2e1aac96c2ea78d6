import type { HistoryRecord } from '@truesweep/history';

/** Records by sensor, and of each by recording. */
export type Gathered = ReadonlyMap<string, ReadonlyMap<string, HistoryRecord>>;

/** Records with more of them, each recording of a sensor once: the later takes the place of the earlier. */
export function gatherRecords(before: Gathered, more: readonly HistoryRecord[]): Gathered {
  const all = new Map(before);
  const own = new Set<string>();
  for (const record of more) {
    if (!own.has(record.sensor)) all.set(record.sensor, new Map(all.get(record.sensor)));
    own.add(record.sensor);
    (all.get(record.sensor) as Map<string, HistoryRecord>).set(record.recording, record);
  }
  return new Map([...all].sort(([one], [other]) => (one < other ? -1 : 1)));
}
