import { type BenchKind, benchKindLabels, benchKindSentences, wayWords } from '@truesweep/wording';
import { benchKinds, type Way } from './way.js';
import type { WayStore } from './wayStore.js';

/** The pages of each kind of sensor that has some of its own, from the way's page. */
const pages: Readonly<
  Partial<Record<BenchKind, readonly (readonly [path: string, title: string])[]>>
> = {
  temperature: [
    ['../calculators/ice-and-boiling/', wayWords.iceAndBoiling],
    ['../calculators/temperature-now/', wayWords.temperatureNow],
    ['../calculators/fit-a-curve/', wayWords.fitCurve],
  ],
  pressure: [['../calculators/pressure-sensor/', wayWords.pressureSensor]],
  'two-state': [['../calculators/two-states/', wayWords.twoStates]],
  winding: [['../calculators/coil/', wayWords.coil]],
  contactless: [['../calculators/potentiometer-or-not/', wayWords.potentiometerOrNot]],
};

/** What lies on the bench: the throttle's potentiometer goes on, the others have pages of their own. */
export function Bench(props: { readonly store: WayStore | undefined; readonly way: Way }) {
  const { store, way } = props;
  const links = pages[way.bench];
  return (
    <>
      <fieldset class="ticks">
        <legend>{wayWords.bench}</legend>
        {benchKinds.map((kind) => (
          <label key={kind}>
            <input
              type="radio"
              name="bench"
              value={kind}
              checked={way.bench === kind}
              onChange={() => store?.change((before) => ({ ...before, bench: kind }))}
            />{' '}
            {benchKindLabels[kind]}
          </label>
        ))}
      </fieldset>
      <div role="status">
        <p>{benchKindSentences[way.bench]}</p>
      </div>
      {links && (
        <nav class="bench-pages" aria-label={wayWords.leadOn}>
          <ul>
            {links.map(([path, title]) => (
              <li key={path}>
                <a href={path}>{title}</a>
              </li>
            ))}
          </ul>
        </nav>
      )}
    </>
  );
}
