import type { Verdict } from '@truesweep/core';
import {
  type HistoryQuantity,
  type HistoryRecord,
  type SharedScatter,
  sensorHistory,
} from '@truesweep/history';

/** A sensor in the list. */
export interface ListedSensor {
  readonly sensor: string;
  readonly records: number;
  /** The days of its first and its last record, ISO 8601; left out where none has a date. */
  readonly from?: string;
  readonly to?: string;
  readonly verdict: Verdict;
  readonly changed: readonly HistoryQuantity[];
}

/** The sensors in the order of the list: those with a change first, then by name. */
export function listedSensors(
  sensors: Iterable<readonly HistoryRecord[]>,
  shared: SharedScatter,
): readonly ListedSensor[] {
  const listed = [...sensors].flatMap((records) => listedSensor(records, shared));
  const rank = ({ changed }: ListedSensor) => (changed.length > 0 ? 0 : 1);
  return listed.sort(
    (one, other) => rank(one) - rank(other) || (one.sensor < other.sensor ? -1 : 1),
  );
}

function listedSensor(
  given: readonly HistoryRecord[],
  shared: SharedScatter,
): readonly ListedSensor[] {
  const { sensor, records, undated, quantities } = sensorHistory(given, shared);
  const dated = records.length - undated;
  const last = records[dated - 1] ?? records.at(-1);
  if (!last) return [];
  const [from, to] = [dayOf(records[0]), dayOf(records[dated - 1])];
  return [
    {
      sensor,
      records: records.length,
      ...(from !== undefined && { from }),
      ...(to !== undefined && { to }),
      verdict: last.verdict,
      changed: quantities.filter(({ trend }) => trend?.changed).map(({ quantity }) => quantity),
    },
  ];
}

function dayOf(record: HistoryRecord | undefined): string | undefined {
  return record?.date?.trim().slice(0, 10);
}
