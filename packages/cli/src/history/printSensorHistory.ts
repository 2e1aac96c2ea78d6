import { formatQuantity } from '@truesweep/core';
import type { HistoryRecord, SensorHistory } from '@truesweep/history';
import {
  findingLabels,
  historyQuantityNames,
  historyWords,
  quantitySentences,
  recordDate,
  undatedSentence,
  verdictLabels,
} from '@truesweep/wording';
import { printTheseCautions } from '../printCautions.js';
import { paragraph, type TextPart, table } from '../textPart.js';

/** As wide as the longest name, and two spaces. */
const nameWidth = Math.max(...Object.values(historyQuantityNames).map(({ length }) => length)) + 2;

/** One sensor's records, and what changed. */
export function printSensorHistory({
  sensor,
  records,
  quantities,
  undated,
}: SensorHistory): readonly TextPart[] {
  const head = ['date', 'verdict', 'closed', 'open', 'hysteresis', 'worst'] as const;
  return [
    sensor,
    table(
      head.map((name) => historyWords[name]),
      records.map(cells),
      ['left', 'left', 'right', 'right', 'right', 'left'],
    ),
    '',
    `${historyWords.trends}:`,
    ...quantities.map((told) =>
      paragraph(
        quantitySentences(told).join(' '),
        `  ${capital(historyQuantityNames[told.quantity]).padEnd(nameWidth)}`,
      ),
    ),
    '',
    ...(undated > 0 ? [paragraph(undatedSentence(undated))] : []),
    paragraph(historyWords.howTold),
    paragraph(historyWords.noVerdict),
    '',
    ...printTheseCautions([]),
  ];
}

function cells(record: HistoryRecord): readonly string[] {
  const { date, dateFrom, verdict, closed, open, hysteresis, worst } = record;
  const volts = (value: number | undefined, digits: number) =>
    value === undefined ? '' : formatQuantity(value, 'V', { digits });
  const place = worst?.travel === undefined ? '' : ` at ${percent(worst.travel)}`;
  return [
    date === undefined ? historyWords.noDate : recordDate(date, dateFrom ?? 'told'),
    verdictLabels[verdict],
    volts(closed?.volts, 4),
    volts(open?.volts, 4),
    volts(hysteresis, 2),
    worst ? `${findingLabels[worst.kind]}, ${percent(worst.depthOfSpan)}${place}` : '',
  ];
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

function percent(part: number): string {
  return formatQuantity(part, '%', { digits: 2 });
}
