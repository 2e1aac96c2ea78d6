import { formatQuantity } from '@truesweep/core';
import { shelfWords, verdictLabels } from '@truesweep/wording';
import { useState } from 'preact/hooks';
import { VerdictSign } from '../checkSweep/VerdictSign.js';
import { Compared } from './Compared.js';
import { endsOf } from './endsOf.js';
import { SeasonsDrawing } from './SeasonsDrawing.js';
import { ShelfFields } from './ShelfFields.js';
import type { ShelfResult, ShelfSensor } from './shelf.js';

/** One sensor: what it is told by, its results over the seasons, the last compared with the one before. */
export function ShelfSensorPart(props: {
  readonly sensor: ShelfSensor;
  readonly onChange: (next: (before: ShelfSensor) => ShelfSensor) => Promise<boolean>;
  readonly onRemove: () => Promise<boolean>;
}) {
  const { sensor, onChange, onRemove } = props;
  const { id, name, serial, machine, note, results } = sensor;
  const [isSure, setSure] = useState(false);
  const newest = results.toReversed();
  const told = [serial, machine, note].filter((text) => text !== '').join(' · ');
  return (
    <article class="shelf-sensor">
      <h2>{name}</h2>
      {told !== '' && <p>{told}</p>}
      <p class="keep">
        <a class="button" href={`../calculators/check-a-sweep/?sensor=${id}`}>
          {shelfWords.judge}
        </a>
      </p>
      {newest.length === 0 ? <p>{shelfWords.noResults}</p> : <Results results={newest} />}
      {results.length > 1 && <SeasonsDrawing results={results} />}
      {newest[0] && newest[1] && <Compared before={newest[1]} after={newest[0]} />}
      <details>
        <summary>{shelfWords.change}</summary>
        <ShelfFields
          words={{ name, serial, machine, note }}
          onWords={(words) => {
            const changedAt = new Date().toISOString();
            void onChange((before) => ({ ...before, ...words, changedAt }));
          }}
        />
        <p class="keep">
          <button
            type="button"
            onClick={() => {
              if (isSure) void onRemove();
              else setSure(true);
            }}
          >
            {isSure ? shelfWords.removeSure : shelfWords.remove}
          </button>
        </p>
      </details>
    </article>
  );
}

function Results({ results }: { readonly results: readonly ShelfResult[] }) {
  return (
    <table class="lists">
      <caption>{shelfWords.results}</caption>
      <thead>
        <tr>
          <th scope="col">{shelfWords.at}</th>
          <th scope="col">{shelfWords.verdict}</th>
          <th scope="col">{shelfWords.closed}</th>
          <th scope="col">{shelfWords.open}</th>
          <th scope="col">{shelfWords.findings}</th>
          <th scope="col">{shelfWords.recording}</th>
        </tr>
      </thead>
      <tbody>
        {results.map((result) => {
          const { at, sha256, verdict, recording } = result;
          const { closed, open, findings } = endsOf(result);
          return (
            <tr key={at + sha256}>
              <th scope="row">{dateText(at)}</th>
              <td data-label={shelfWords.verdict} class={`verdict-line ${verdict}`}>
                <VerdictSign verdict={verdict} /> {verdictLabels[verdict]}
              </td>
              <td data-label={shelfWords.closed}>{volts(closed)}</td>
              <td data-label={shelfWords.open}>{volts(open)}</td>
              <td data-label={shelfWords.findings}>{findings}</td>
              <td data-label={shelfWords.recording}>{recording}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function volts(value: number | undefined): string {
  return value === undefined ? '–' : formatQuantity(value, 'V', { trim: true });
}

/** A moment as a date of this place, ISO 8601. */
function dateText(at: string): string {
  const date = new Date(at);
  return Number.isNaN(date.getTime()) ? at : date.toLocaleDateString('sv-SE');
}
