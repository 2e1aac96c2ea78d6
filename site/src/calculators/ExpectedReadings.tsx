import { CircuitDrawing, CurveDrawing } from '@truesweep/drawings';
import {
  entryHints,
  entryLabels,
  type HookUpEntry,
  mendEntriesSentence,
  readingsSentence,
  readingsWords,
} from '@truesweep/wording';
import { useState } from 'preact/hooks';
import { CurrentsTable } from './CurrentsTable.js';
import { CurveTable } from './CurveTable.js';
import { EntryField } from './EntryField.js';
import { expectedReadings, type Readings } from './expectedReadings.js';
import { boundsOf, entryNames, groups, initialTexts, type Refusals, readHookUp } from './hookUp.js';
import { quantityText } from './quantityText.js';
import { WindowsTable } from './WindowsTable.js';

function inWords({ windows, circuit, straight }: Readings): string {
  const range = (stop: 'closed' | 'open') => ({
    low: quantityText(windows[stop].low, 'V'),
    high: quantityText(windows[stop].high, 'V'),
  });
  return readingsSentence({
    closed: range('closed'),
    open: range('open'),
    source: quantityText(circuit.source.volts, 'V'),
    straight: quantityText(straight, 'V'),
    nominal: quantityText(windows.open.nominal, 'V'),
  });
}

function toMend(refusals: Refusals): string {
  return mendEntriesSentence(
    entryNames.filter((name) => name in refusals).map((name) => entryLabels[name]),
  );
}

/** The calculator: the parts of a hook-up in, windows, curve and currents out. */
export function ExpectedReadings() {
  const [texts, setTexts] = useState(initialTexts);
  const hookUp = readHookUp(texts);
  const refusals = 'refusals' in hookUp ? hookUp.refusals : {};
  const readings = 'refusals' in hookUp ? undefined : expectedReadings(hookUp);
  const field = (name: HookUpEntry) => (
    <EntryField
      key={name}
      name={name}
      label={entryLabels[name]}
      hint={entryHints[name]}
      bounds={boundsOf(name)}
      text={texts[name]}
      refusal={refusals[name]}
      onText={(text) => setTexts((before) => ({ ...before, [name]: text }))}
    />
  );
  return (
    <div class="readings not-content">
      <p class="answer" role="status">
        {readings ? inWords(readings) : toMend(refusals)}
      </p>
      {readings?.circuit.limiter === 0 && <p class="caution">{readingsWords.noLimiter}</p>}
      <div class="beside">
        <form onSubmit={(event) => event.preventDefault()}>
          <fieldset>
            <legend>{readingsWords.parts}</legend>
            {groups.parts.map(field)}
          </fieldset>
          <details>
            <summary>{readingsWords.tolerances}</summary>
            {groups.tolerances.map(field)}
          </details>
          <details>
            <summary>{readingsWords.furtherParts}</summary>
            {groups.furtherParts.map(field)}
          </details>
        </form>
        {readings && <CircuitDrawing id="circuit-drawing" {...readings} />}
      </div>
      {readings && (
        <>
          <WindowsTable windows={readings.windows} />
          <div class="beside">
            <CurveDrawing id="curve-drawing" curve={readings.curve} windows={readings.windows} />
            <CurveTable curve={readings.curve} />
          </div>
          <CurrentsTable closed={readings.closed} open={readings.open} />
        </>
      )}
    </div>
  );
}
