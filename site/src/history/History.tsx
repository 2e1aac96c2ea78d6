import {
  changedSensorsSentence,
  historyPageWords,
  listedSensorsSentence,
  shelfTroubleSentences,
  shelfWords,
} from '@truesweep/wording';
import { useEffect, useRef, useState } from 'preact/hooks';
import { NewerVersion } from '../offline/NewerVersion.js';
import { ChooseResults } from './ChooseResults.js';
import type { ReadSource } from './historyProtocol.js';
import type { ListedSensor } from './listedSensors.js';
import { SensorList } from './SensorList.js';
import { SensorPart } from './SensorPart.js';
import { useHistory } from './useHistory.js';

/** So many rows are added to the list at a time. */
const page = 50;

/** What changed of sensors from recording to recording: of the shelf, and of files that are opened. */
export function History() {
  const { busy, list, view, broken, shelfTrouble, damagedOnShelf, ...act } = useHistory();
  const sources = list ? [...(list.shelf ? [list.shelf] : []), ...list.files] : [];
  const sensors = list?.sensors ?? [];
  const isGiven = sensors.length > 0;
  return (
    <div class={`readings history not-content${isGiven ? ' given' : ''}`} aria-busy={!!busy}>
      <NewerVersion />
      <ChooseResults onFiles={act.openFiles} />
      <div role="status">
        {busy !== undefined && <p>{busy}</p>}
        {broken !== undefined && <p class="refusal">{broken}</p>}
        {shelfTrouble && <p class="refusal">{shelfTroubleSentences[shelfTrouble]}</p>}
        {damagedOnShelf > 0 && (
          <p class="refusal">
            <a href="../shelf/">{historyPageWords.theShelf}</a>: {shelfWords.damaged}
          </p>
        )}
        {sources.map((source) => (
          <Source key={source.said} source={source} />
        ))}
      </div>
      {list && list.files.length > 0 && (
        <p class="keep">
          <button type="button" onClick={act.forgetFiles}>
            {historyPageWords.forget}
          </button>
        </p>
      )}
      {isGiven && <ChosenSensor sensors={sensors} view={view} onChoose={act.choose} />}
    </div>
  );
}

function Source({ source }: { readonly source: ReadSource }) {
  const { said, damaged, refused } = source;
  return (
    <>
      <p class={refused ? 'refusal' : undefined}>{said}</p>
      {damaged.map((sentence) => (
        <p key={sentence} class="refusal">
          {sentence}
        </p>
      ))}
    </>
  );
}

/** The list, and below it the sensor that was chosen there. */
function ChosenSensor(props: {
  readonly sensors: readonly ListedSensor[];
  readonly view: Parameters<typeof SensorPart>[0]['view'] | undefined;
  readonly onChoose: (sensor: string) => void;
}) {
  const { sensors, view, onChoose } = props;
  const [wanted, setWanted] = useState('');
  const [rows, setRows] = useState(page);
  const [goesTo, setGoesTo] = useState<string>();
  const find = useRef<HTMLInputElement>(null);
  const name = view?.sensor;
  // Who chose a sensor is taken to it, with the keyboard too.
  useEffect(() => {
    if (goesTo === undefined || goesTo !== name) return;
    document.getElementById('history-sensor')?.focus();
    setGoesTo(undefined);
  }, [goesTo, name]);
  const searched = wanted.trim().toLowerCase();
  const found = sensors.filter(({ sensor }) => sensor.toLowerCase().includes(searched));
  const changed = sensors.filter((one) => one.changed.length > 0).length;
  return (
    <>
      <p class="answer">{changedSensorsSentence(sensors.length, changed)}</p>
      <p class="keep">
        <label for="find-sensor">{historyPageWords.find}</label>
        <input
          id="find-sensor"
          ref={find}
          type="search"
          value={wanted}
          onInput={(event) => {
            setWanted(event.currentTarget.value);
            setRows(page);
          }}
        />
      </p>
      {found.length === 0 ? (
        <p>{historyPageWords.noneFound}</p>
      ) : (
        <SensorList
          sensors={found.slice(0, rows)}
          chosen={name}
          onChoose={(sensor) => {
            setGoesTo(sensor);
            onChoose(sensor);
          }}
        />
      )}
      {found.length > rows && (
        <p class="keep">
          {listedSensorsSentence(rows, found.length)}{' '}
          <button type="button" onClick={() => setRows(rows + page)}>
            {historyPageWords.more}
          </button>
        </p>
      )}
      {view ? (
        <SensorPart id="history-sensor" view={view}>
          <p class="keep">
            <button type="button" onClick={() => find.current?.focus()}>
              {historyPageWords.back}
            </button>
          </p>
        </SensorPart>
      ) : (
        <p>{historyPageWords.choose}</p>
      )}
    </>
  );
}
