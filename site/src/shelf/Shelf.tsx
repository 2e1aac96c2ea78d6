import {
  shelfOpenedSentence,
  shelfRefusals,
  shelfTroubleSentences,
  shelfWords,
} from '@truesweep/wording';
import { useEffect, useState } from 'preact/hooks';
import { KeptFile } from '../forms/KeptFile.js';
import { NewerVersion } from '../offline/NewerVersion.js';
import { ShelfSensorPart } from './ShelfSensorPart.js';
import { readShelf, type ShelfSensor, writeShelf } from './shelf.js';
import {
  addSensors,
  changeSensor,
  followShelf,
  readAll,
  removeEntry,
  type ShelfContent,
  type ShelfTrouble,
  type Tried,
} from './shelfStore.js';

/** The sensors that are kept in this browser, with their results; saved as a file and opened from one. */
export function Shelf() {
  const [content, setContent] = useState<ShelfContent>();
  const [trouble, setTrouble] = useState<ShelfTrouble>();
  const [said, setSaid] = useState<string>();

  const read = async () => {
    const tried = await readAll();
    if ('value' in tried) setContent(tried.value);
    else setTrouble(tried.trouble);
  };
  /** Takes what came of a change: why it could not be made, and the shelf as it is then. */
  const changed = async (tried: Tried<unknown>): Promise<boolean> => {
    setTrouble('trouble' in tried ? tried.trouble : undefined);
    await read();
    return 'value' in tried;
  };
  useEffect(() => {
    void read();
    return followShelf(() => {
      setSaid(shelfWords.changedElsewhere);
      void read();
    });
  }, []);

  const open = async (file: File | undefined) => {
    if (!file) return;
    const given = readShelf(await file.text());
    if ('refusal' in given) return setSaid(shelfRefusals[given.refusal]);
    const isDone = await changed(await addSensors(given.sensors));
    setSaid(isDone ? shelfOpenedSentence(given.sensors.length, given.damaged) : undefined);
  };
  const change = async (sensor: ShelfSensor, next: (before: ShelfSensor) => ShelfSensor) =>
    await changed(await changeSensor(sensor.id, (before) => next(before ?? sensor)));
  const remove = async (key: string) => await changed(await removeEntry(key));
  const { sensors = [], damaged = [] } = content ?? {};
  return (
    <div class="readings shelf not-content">
      <NewerVersion />
      <div role="status">
        {said !== undefined && <p class="notice">{said}</p>}
        {trouble && <p class="refusal">{shelfTroubleSentences[trouble]}</p>}
      </div>
      {content && sensors.length === 0 && damaged.length === 0 && (
        <p class="answer">{shelfWords.emptyLong}</p>
      )}
      {sensors.map((sensor) => (
        <ShelfSensorPart
          key={sensor.id}
          sensor={sensor}
          onChange={(next) => change(sensor, next)}
          onRemove={() => remove(sensor.id)}
        />
      ))}
      {damaged.map(({ key, stored }) => (
        <section key={key} class="damaged">
          <p class="refusal">{shelfWords.damaged}</p>
          <p class="keep">
            <KeptFile
              name="damaged-entry.json"
              type="application/json"
              text={JSON.stringify(stored, undefined, 1) ?? 'null'}
            >
              {shelfWords.saveDamaged}
            </KeptFile>
            <button type="button" onClick={() => remove(key)}>
              {shelfWords.remove}
            </button>
          </p>
        </section>
      ))}
      <p class="keep">
        {sensors.length > 0 && (
          <KeptFile name="sensors.shelf.json" type="application/json" text={writeShelf(sensors)}>
            {shelfWords.save}
          </KeptFile>
        )}
        <label class="file">
          {shelfWords.openFile}{' '}
          <input
            type="file"
            accept=".json"
            onChange={async (event) => await open(event.currentTarget.files?.[0])}
          />
        </label>
      </p>
    </div>
  );
}
