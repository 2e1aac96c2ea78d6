import type { HistoryRecord } from '@truesweep/history';
import type { Output } from '../terminal.js';
import { sourceRecords } from './sourceRecords.js';

/** The records of files and folders of results by sensor, each recording once, without keeping them; sensors by name. */
export async function looseRecords(
  sources: readonly string[],
  output: Output,
): Promise<ReadonlyMap<string, readonly HistoryRecord[]>> {
  const sensors = new Map<string, Map<string, HistoryRecord>>();
  for await (const records of sourceRecords(sources, output, () => {}))
    for (const record of records) {
      const known = sensors.get(record.sensor) ?? new Map<string, HistoryRecord>();
      sensors.set(record.sensor, known.set(record.recording, record));
    }
  const sorted = [...sensors].sort(([one], [other]) => (one < other ? -1 : 1));
  return new Map(sorted.map(([sensor, records]) => [sensor, [...records.values()]]));
}
