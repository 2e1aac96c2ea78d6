import type { HistoryRecord } from '@truesweep/history';

/** Records by sensor, in each those of its recordings by their hashes. */
export type RecordBook = Map<string, Map<string, HistoryRecord>>;

/** Puts records in: of one recording of a sensor the later stands, but a date that was told outlasts that of a judgement. */
export function putRecords(book: RecordBook, records: Iterable<HistoryRecord>): void {
  for (const record of records) {
    const known = book.get(record.sensor) ?? new Map<string, HistoryRecord>();
    known.set(record.recording, withBetterDate(record, known.get(record.recording)));
    book.set(record.sensor, known);
  }
}

function withBetterDate(record: HistoryRecord, before: HistoryRecord | undefined): HistoryRecord {
  const isWorse = record.date === undefined || record.dateFrom === 'judged';
  if (!isWorse || before?.date === undefined) return record;
  const { date, dateFrom } = before;
  return { ...record, date, ...(dateFrom && { dateFrom }) };
}
