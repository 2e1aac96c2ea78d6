import type { HistoryRecord } from './historyRecord.js';

/** What tells a date best. */
const ranks: Readonly<Record<NonNullable<HistoryRecord['dateFrom']> | 'none', number>> = {
  told: 3,
  'file-name': 2,
  judged: 1,
  none: 0,
};

/**
 * Two records of one recording as one: the later, with what only the earlier tells; the earlier itself where an older truesweep made the later, or it says no
 * more.
 */
export function joinedRecord(there: HistoryRecord, later: HistoryRecord): HistoryRecord {
  if (isOlder(later.version, there.version)) return there;
  const dated = rankOf(later) >= rankOf(there) ? later : there;
  const note = later.note ?? there.note;
  const { date: _, dateFrom: __, note: ___, ...rest } = later;
  const { date, dateFrom } = dated;
  const joined = {
    ...rest,
    ...(date !== undefined && { date }),
    ...(dateFrom && { dateFrom }),
    ...(note !== undefined && { note }),
  };
  return isSame(joined, there) ? there : joined;
}

function rankOf({ date, dateFrom }: HistoryRecord): number {
  return date === undefined ? ranks.none : ranks[dateFrom ?? 'told'];
}

function isSame(one: HistoryRecord, other: HistoryRecord): boolean {
  const sorted = (_: string, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value;
  return JSON.stringify(one, sorted) === JSON.stringify(other, sorted);
}

/** Whether a version is lower than another, by their numbers; one that is not known is not. */
function isOlder(one: string | undefined, other: string | undefined): boolean {
  if (one === undefined || other === undefined) return false;
  const [a, b] = [numbersOf(one), numbersOf(other)];
  const differing = a.findIndex((number, i) => number !== b[i]);
  return differing >= 0 && a[differing]! < (b[differing] ?? 0);
}

function numbersOf(version: string): readonly number[] {
  return [0, 1, 2].map((i) => Number(version.split(/[.+-]/)[i] ?? 0) || 0);
}
