import { type BenchKind, benchKindLabels, wayWords } from '@truesweep/wording';
import { benchKinds, type Way } from './way.js';
import type { WayStore } from './wayStore.js';

type Page = readonly [name: string, title: string];

/** The calculators of each kind that has some of its own. */
const pages: Readonly<Partial<Record<BenchKind, readonly Page[]>>> = {
  temperature: [
    ['ice-and-boiling', wayWords.iceAndBoiling],
    ['temperature-now', wayWords.temperatureNow],
    ['fit-a-curve', wayWords.fitCurve],
  ],
  pressure: [['pressure-sensor', wayWords.pressureSensor]],
  'two-state': [['two-states', wayWords.twoStates]],
  winding: [['coil', wayWords.coil]],
  contactless: [['potentiometer-or-not', wayWords.potentiometerOrNot]],
};

const said: Readonly<Partial<Record<BenchKind, string>>> = {
  throttle: wayWords.forThrottle,
  contactless: wayWords.contactless,
};

/** What lies on the bench: the throttle's potentiometer goes on, the others have pages of their own. */
export function Bench(props: { readonly store: WayStore | undefined; readonly way: Way }) {
  const { store, way } = props;
  return (
    <>
      <fieldset class="ticks">
        <legend>{wayWords.bench}</legend>
        {benchKinds.map((kind) => (
          <label key={kind}>
            <input
              type="radio"
              name="bench"
              checked={way.bench === kind}
              onChange={() => store?.change((before) => ({ ...before, bench: kind }))}
            />{' '}
            {benchKindLabels[kind]}
          </label>
        ))}
      </fieldset>
      <div role="status">
        <p>{said[way.bench] ?? wayWords.byReadings}</p>
        <ul>
          {pages[way.bench]?.map(([name, title]) => (
            <li key={name}>
              <a href={`../calculators/${name}/`}>{title}</a>
            </li>
          ))}
        </ul>
      </div>
    </>
  );
}
