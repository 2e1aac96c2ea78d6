import {
  type Determined,
  formatQuantity,
  isDetermined,
  type OperatingPoint,
  type PartName,
  type QuantityUnit,
  type ReadingWindow,
} from '@truesweep/core';
import { useState } from 'preact/hooks';
import { expectedReadings, type Readings } from './expectedReadings.js';
import {
  type FieldName,
  fieldNames,
  fields,
  initialTexts,
  readHookUp,
  refusalOf,
} from './hookUp.js';

type Answer = { readonly readings: Readings } | { readonly refusal: string };

function answerTo(texts: typeof initialTexts): Answer {
  try {
    return { readings: expectedReadings(readHookUp(texts)) };
  } catch (error) {
    return { refusal: refusalOf(error) };
  }
}

function written(value: Determined<number> | undefined, unit: QuantityUnit): string {
  return value !== undefined && isDetermined(value)
    ? formatQuantity(value, unit)
    : 'no single value';
}

function WindowRow({ label, window }: { label: string; window: ReadingWindow }) {
  return (
    <tr>
      <th scope="row">{label}</th>
      {[window.low, window.nominal, window.high].map((volts) => (
        <td key={volts}>{written(volts, 'V')}</td>
      ))}
    </tr>
  );
}

const currents: readonly { readonly part: PartName; readonly label: string }[] = [
  { part: 'limiter', label: 'Through the limiting resistor' },
  { part: 'contact', label: "Through the wiper's contact" },
];

function CurrentRow({ part, label, at }: { part: PartName; label: string; at: OperatingPoint[] }) {
  return (
    <tr>
      <th scope="row">{label}</th>
      {at.map((point) => (
        <td key={point.position}>{written(point.parts[part]?.amps, 'A')}</td>
      ))}
    </tr>
  );
}

function Tables({ windows, quarters, closed, open }: Readings) {
  return (
    <>
      <table id="windows">
        <caption>Windows for the readings of a sound sensor</caption>
        <thead>
          <tr>
            <th scope="col">Throttle</th>
            <th scope="col">Lowest</th>
            <th scope="col">Nominal</th>
            <th scope="col">Highest</th>
          </tr>
        </thead>
        <tbody>
          <WindowRow label="Closed" window={windows.closed} />
          <WindowRow label="Open" window={windows.open} />
        </tbody>
      </table>
      <table id="curve">
        <caption>Nominal reading over travel</caption>
        <thead>
          <tr>
            <th scope="col">Travel</th>
            <th scope="col">Reading</th>
          </tr>
        </thead>
        <tbody>
          {quarters.map(({ travel, volts }) => (
            <tr key={travel}>
              <th scope="row">{formatQuantity(travel, '%', { trim: true })}</th>
              <td>{written(volts, 'V')}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <table id="currents">
        <caption>Currents with the throttle at its stops</caption>
        <thead>
          <tr>
            <th scope="col">Current</th>
            <th scope="col">Closed</th>
            <th scope="col">Open</th>
          </tr>
        </thead>
        <tbody>
          {currents.map(({ part, label }) => (
            <CurrentRow key={part} part={part} label={label} at={[closed, open]} />
          ))}
        </tbody>
      </table>
    </>
  );
}

/** The calculator: the parts of a hook-up in, windows, curve and currents out. */
export function ExpectedReadings() {
  const [texts, setTexts] = useState(initialTexts);
  const answer = answerTo(texts);
  const change = (name: FieldName, text: string) => setTexts({ ...texts, [name]: text });
  return (
    <div class="readings not-content">
      <form onSubmit={(event) => event.preventDefault()}>
        <fieldset>
          <legend>Parts of the hook-up</legend>
          {fieldNames.map((name) => (
            <label key={name}>
              {fields[name].label}
              <input
                name={name}
                value={texts[name]}
                autocomplete="off"
                onInput={(event) => change(name, event.currentTarget.value)}
              />
            </label>
          ))}
        </fieldset>
      </form>
      {'readings' in answer ? (
        <Tables {...answer.readings} />
      ) : (
        <p role="alert">{answer.refusal}</p>
      )}
    </div>
  );
}
