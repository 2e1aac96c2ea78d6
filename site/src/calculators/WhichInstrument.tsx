import {
  instrumentSentences,
  instrumentWords,
  mendEntriesSentence,
  type SpotEntry,
  spotHints,
  spotLabels,
} from '@truesweep/wording';
import { useState } from 'preact/hooks';
import { EntryField } from './EntryField.js';
import { boundsOfEntry } from './entry.js';
import { adviceFor, initialSpot, spotEntries, spotGroups, spotNames } from './spot.js';

/** The calculator: a worn spot and a hook-up in; which instrument shows it, and how to set one, out. */
export function WhichInstrument() {
  const [texts, setTexts] = useState(initialSpot);
  const advice = adviceFor(texts);
  const refusals = 'refusals' in advice ? advice.refusals : {};
  const said = 'refusals' in advice ? undefined : instrumentSentences(advice);
  const field = (name: SpotEntry) => (
    <EntryField
      key={name}
      name={name}
      label={spotLabels[name]}
      hint={spotHints[name]}
      bounds={boundsOfEntry(spotEntries[name])}
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
            spotNames.filter((name) => name in refusals).map((name) => spotLabels[name]),
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
          {spotGroups.spot.map(field)}
        </fieldset>
        <fieldset>
          <legend>{instrumentWords.hookUp}</legend>
          {spotGroups.hookUp.map(field)}
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
