import type { Verdict } from '@truesweep/core';
import {
  type HistoryQuantity,
  type HistoryRecord,
  type SharedScatter,
  sensorHistory,
  sharedScatter,
} from '@truesweep/history';
import type { Gathered } from './gatherRecords.js';

/** A row of the list. */
export interface ListedHistory {
  readonly sensor: string;
  readonly records: number;
  readonly verdict: Verdict;
  readonly from?: string;
  readonly to?: string;
  readonly changed: readonly HistoryQuantity[];
}

/** The list of sensors, those with a change first, and what they share. */
export interface Histories {
  readonly rows: readonly ListedHistory[];
  readonly shared: SharedScatter;
}

/** So long is worked at a time: the page answers in between. */
const slice = 30;

/** Lists what changed of each sensor. */
export function listHistories(gathered: Gathered): Histories {
  const work = listInSteps(gathered);
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}

/** The same, with pauses in which the page answers; nothing where it is no longer wanted. */
export async function listInSlices(
  gathered: Gathered,
  signal: AbortSignal,
): Promise<Histories | undefined> {
  const work = listInSteps(gathered);
  let begun = performance.now();
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
    if (performance.now() - begun < slice) continue;
    await new Promise((resume) => setTimeout(resume));
    if (signal.aborted) return undefined;
    begun = performance.now();
  }
}

function* listInSteps(gathered: Gathered): Generator<undefined, Histories> {
  const all = [...gathered.values()].map((records) => [...records.values()]);
  // One pass takes a third of the time; a few thousand sensors say as much of the scatter as all of them.
  const shared = sharedScatter(all.slice(0, mostShared));
  yield;
  const rows: ListedHistory[] = [];
  for (const records of all) {
    rows.push(listed(records, shared));
    yield;
  }
  const isChanged = ({ changed }: ListedHistory) => changed.length > 0;
  return { rows: [...rows.filter(isChanged), ...rows.filter((row) => !isChanged(row))], shared };
}

const mostShared = 200;

function listed(records: readonly HistoryRecord[], shared: SharedScatter): ListedHistory {
  const { sensor, records: sorted, quantities } = sensorHistory(records, shared);
  const dated = sorted.filter(({ date }) => date !== undefined);
  const [first, last] = [dated[0]?.date, dated.at(-1)?.date];
  return {
    sensor,
    records: sorted.length,
    verdict: (dated.at(-1) ?? sorted.at(-1))?.verdict ?? 'inconclusive',
    ...(first !== undefined && { from: first.slice(0, 10) }),
    ...(last !== undefined && { to: last.slice(0, 10) }),
    changed: quantities.filter(({ trend }) => trend?.changed).map(({ quantity }) => quantity),
  };
}
