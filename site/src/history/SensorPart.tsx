import { formatQuantity } from '@truesweep/core';
import { type HistoryRecord, type SharedScatter, sensorHistory } from '@truesweep/history';
import {
  findingLabels,
  historyQuantityLabels,
  historyWords,
  quantitySentences,
  recordDate,
  undatedSentence,
  verdictLabels,
} from '@truesweep/wording';
import { VerdictSign } from '../checkSweep/VerdictSign.js';
import { TrendDrawing } from './TrendDrawing.js';

/** One sensor: its records, and each quantity over time with what is told of it. */
export function SensorPart(props: {
  readonly records: readonly HistoryRecord[];
  readonly shared: SharedScatter;
}) {
  const { sensor, records, quantities, undated } = sensorHistory(props.records, props.shared);
  return (
    <article class="sensor-history">
      <h2>{sensor}</h2>
      <Records records={records} />
      {undated > 0 && <p>{undatedSentence(undated)}</p>}
      <h3>{historyWords.trends}</h3>
      <div class="followed">
        {quantities.map((told) => {
          const sentences = quantitySentences(told);
          return (
            <section key={told.quantity} class={told.trend?.changed ? 'changed' : undefined}>
              <h4>{historyQuantityLabels[told.quantity]}</h4>
              <p>{sentences.join(' ')}</p>
              {told.points.some(({ value }) => value !== told.points[0]?.value) && (
                <TrendDrawing
                  told={told}
                  label={`${historyQuantityLabels[told.quantity]}: ${sentences.join(' ')}`}
                />
              )}
            </section>
          );
        })}
      </div>
    </article>
  );
}

const columns = ['closed', 'open', 'hysteresis', 'noise', 'worst', 'file'] as const;

function Records({ records }: { readonly records: readonly HistoryRecord[] }) {
  return (
    <table class="lists">
      <caption>{historyWords.records}</caption>
      <thead>
        <tr>
          <th scope="col">{historyWords.date}</th>
          <th scope="col">{historyWords.verdict}</th>
          {columns.map((name) => (
            <th key={name} scope="col">
              {historyWords[name]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {records.map((record) => (
          <tr key={record.recording}>
            <th scope="row">
              {record.date === undefined
                ? historyWords.noDate
                : recordDate(record.date, record.dateFrom ?? 'told')}
            </th>
            <td data-label={historyWords.verdict} class={`verdict-line ${record.verdict}`}>
              <VerdictSign verdict={record.verdict} /> {verdictLabels[record.verdict]}
            </td>
            {columns.map((name) => (
              <td key={name} data-label={historyWords[name]}>
                {cellOf(name, record)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function cellOf(name: (typeof columns)[number], record: HistoryRecord): string {
  const { closed, open, hysteresis, noise, worst, file } = record;
  switch (name) {
    case 'closed':
      return volts(closed?.volts, 4);
    case 'open':
      return volts(open?.volts, 4);
    case 'hysteresis':
      return volts(hysteresis, 2);
    case 'noise':
      return volts(noise, 2);
    case 'worst': {
      if (!worst) return '–';
      const place = worst.travel === undefined ? '' : ` at ${percent(worst.travel)}`;
      return `${findingLabels[worst.kind]}, ${percent(worst.depthOfSpan)}${place}`;
    }
    case 'file':
      return file;
  }
}

function volts(value: number | undefined, digits: number): string {
  return value === undefined ? '–' : formatQuantity(value, 'V', { digits });
}

function percent(part: number): string {
  return formatQuantity(part, '%', { digits: 2 });
}
