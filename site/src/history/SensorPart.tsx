import {
  historyPageWords,
  historyQuantityLabels,
  historyScaleText,
  historyWords,
  newestRecordsSentence,
  thinnedSentence,
  verdictLabels,
} from '@truesweep/wording';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { VerdictSign } from '../checkSweep/VerdictSign.js';
import type { QuantityView, RecordRow, SensorView } from './sensorView.js';
import { TrendDrawing } from './TrendDrawing.js';

const columns = ['closed', 'open', 'hysteresis', 'noise', 'worst'] as const;

/** One sensor: what changed, quantity by quantity with its drawing, then its records. */
export function SensorPart(props: {
  readonly id: string;
  readonly view: SensorView;
  readonly children?: ComponentChildren;
}) {
  const { id, view, children } = props;
  const { sensor, records, rows, undated, quantities } = view;
  return (
    <article class="history-sensor">
      <h2 id={id} tabIndex={-1}>
        {sensor}
      </h2>
      {children}
      <RecordsTable key={sensor} rows={rows} />
      {rows.length < records && <p>{newestRecordsSentence(rows.length, records)}</p>}
      {undated !== undefined && <p>{undated}</p>}
      <h3>{historyWords.trends}</h3>
      <p class="hint">{historyPageWords.legend}</p>
      <div class="quantities">
        {quantities.map((one) => (
          <Quantity key={one.quantity} id={`${id}-${one.quantity}`} view={one} />
        ))}
      </div>
    </article>
  );
}

function Quantity({ id, view }: { readonly id: string; readonly view: QuantityView }) {
  const { quantity, changed, sentences, plot } = view;
  const label = historyQuantityLabels[quantity];
  return (
    <section class={changed ? 'quantity changed' : 'quantity'} aria-label={label}>
      <h4>{label}</h4>
      <p>{sentences.join(' ')}</p>
      {plot && (
        <figure>
          <TrendDrawing id={id} title={label} plot={plot} />
          <figcaption>{historyScaleText(quantity)}</figcaption>
        </figure>
      )}
      {plot && plot.points.length < plot.values && <p>{thinnedSentence(plot.values)}</p>}
    </section>
  );
}

/** So many records stand there at first; so many more each time. */
const [first, page] = [12, 50];

function RecordsTable({ rows }: { readonly rows: readonly RecordRow[] }) {
  const [shown, setShown] = useState(first);
  return (
    <>
      <table class="lists">
        <caption>{historyPageWords.records}</caption>
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
          {rows.slice(0, shown).map((row) => (
            <tr key={row.key}>
              <th scope="row">{row.date}</th>
              <td data-label={historyWords.verdict} class={`verdict-line ${row.verdict}`}>
                <span>
                  <VerdictSign verdict={row.verdict} /> {verdictLabels[row.verdict]}
                </span>
              </td>
              {columns.map((name) => (
                <td key={name} data-label={historyWords[name]}>
                  {row[name]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {rows.length > shown && (
        <p class="keep">
          <button type="button" onClick={() => setShown(shown + page)}>
            {historyPageWords.moreRecords}
          </button>
        </p>
      )}
    </>
  );
}
