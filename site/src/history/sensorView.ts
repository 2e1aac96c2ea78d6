import { formatQuantity } from '@truesweep/core';
import type { HistoryRecord, SensorHistory } from '@truesweep/history';
import {
  findingLabels,
  historyWords,
  quantitySentences,
  recordDate,
  undatedSentence,
  worstPlaceText,
} from '@truesweep/wording';
import { type TrendPlot, trendPlot } from './trendPlot.js';

/** A record as the table has it. */
export interface RecordRow {
  readonly key: string;
  readonly date: string;
  readonly verdict: HistoryRecord['verdict'];
  readonly closed: string;
  readonly open: string;
  readonly hysteresis: string;
  readonly noise: string;
  readonly worst: string;
}

/** What is shown of a quantity. */
export interface QuantityView {
  readonly quantity: SensorHistory['quantities'][number]['quantity'];
  readonly changed: boolean;
  readonly sentences: readonly string[];
  readonly plot?: TrendPlot;
}

/** What is shown of a sensor: plain data, small however many records there are. */
export interface SensorView {
  readonly sensor: string;
  readonly records: number;
  /** The newest records, the newest first. */
  readonly rows: readonly RecordRow[];
  readonly undated?: string;
  readonly quantities: readonly QuantityView[];
}

/** A page takes no more rows in without a halt. */
const mostRows = 200;

/** What is shown of a sensor's history. */
export function sensorView({ sensor, records, undated, quantities }: SensorHistory): SensorView {
  const dated = records.slice(0, records.length - undated).toReversed();
  const newest = [...dated, ...records.slice(records.length - undated)].slice(0, mostRows);
  return {
    sensor,
    records: records.length,
    rows: newest.map(rowOf),
    ...(undated > 0 && { undated: undatedSentence(undated) }),
    quantities: quantities.map((told) => {
      const plot = trendPlot(told);
      return {
        quantity: told.quantity,
        changed: told.trend?.changed === true,
        sentences: quantitySentences(told),
        ...(plot && { plot }),
      };
    }),
  };
}

function rowOf(record: HistoryRecord): RecordRow {
  const { recording, date, dateFrom, verdict, closed, open, hysteresis, noise, worst } = record;
  return {
    key: recording,
    date: date === undefined ? historyWords.noDate : recordDate(date, dateFrom ?? 'told'),
    verdict,
    closed: volts(closed?.volts, 4),
    open: volts(open?.volts, 4),
    hysteresis: volts(hysteresis, 2),
    noise: volts(noise, 2),
    worst: worst
      ? worstPlaceText(
          findingLabels[worst.kind],
          percent(worst.depthOfSpan),
          worst.travel === undefined ? undefined : percent(worst.travel),
        )
      : '–',
  };
}

function volts(value: number | undefined, digits: number): string {
  return value === undefined ? '–' : formatQuantity(value, 'V', { digits });
}

function percent(part: number): string {
  return formatQuantity(part, '%', { digits: 2 });
}
