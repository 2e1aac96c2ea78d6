import { instrumentSentences, instrumentWords, mendEntriesSentence } from '@truesweep/wording';
import { useState } from 'preact/hooks';
import { EntryField } from './EntryField.js';
import { boundsOfEntry } from './entry.js';
import {
  adviceFor,
  initialSought,
  type SoughtEntry,
  soughtEntries,
  soughtGroups,
  soughtHints,
  soughtLabels,
  soughtNames,
} from './sought.js';

/** The calculator: a worn spot and a hook-up in; which instrument shows it, and how to set one, out. */
export function WhichInstrument() {
  const [texts, setTexts] = useState(initialSought);
  const advice = adviceFor(texts);
  const refusals = 'refusals' in advice ? advice.refusals : {};
  const said = 'refusals' in advice ? undefined : instrumentSentences(advice);
  const field = (name: SoughtEntry) => (
    <EntryField
      key={name}
      name={name}
      label={soughtLabels[name]}
      hint={soughtHints[name]}
      bounds={boundsOfEntry(soughtEntries[name])}
      text={texts[name]}
      refusal={refusals[name]}
      onText={(text) => setTexts((before) => ({ ...before, [name]: text }))}
    />
  );
  const [head = [], ...rows] = said?.rows ?? [];
  return (
    <div class="readings not-content">
      <p class="answer" role="status">
        {said?.sought ??
          mendEntriesSentence(
            soughtNames.filter((name) => name in refusals).map((name) => soughtLabels[name]),
          )}
      </p>
      {said && (
        <>
          <section class="wide" aria-label={instrumentWords.comparison}>
            <table id="instruments">
              <thead>
                <tr>
                  {head.map((cell) => (
                    <th key={cell} scope="col">
                      {cell}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {rows.map(([name, ...cells]) => (
                  <tr key={name}>
                    <th scope="row">{name}</th>
                    {cells.map((cell, i) => (
                      <td key={head[i + 1]}>{cell}</td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
          <p>{said.assumed}</p>
        </>
      )}
      <form class="beside" onSubmit={(event) => event.preventDefault()}>
        <fieldset>
          <legend>{instrumentWords.spot}</legend>
          {soughtGroups.spot.map(field)}
        </fieldset>
        <fieldset>
          <legend>{instrumentWords.hookUp}</legend>
          {soughtGroups.hookUp.map(field)}
        </fieldset>
      </form>
      {said && (
        <dl>
          <dt>{instrumentWords.digits}</dt>
          <dd class="digits">{said.digits}</dd>
          <dt>{instrumentWords.setting}</dt>
          <dd>{said.setting}</dd>
          <dt>{instrumentWords.meterOnly}</dt>
          {said.meterOnly.map((sentence) => (
            <dd key={sentence}>{sentence}</dd>
          ))}
        </dl>
      )}
    </div>
  );
}
