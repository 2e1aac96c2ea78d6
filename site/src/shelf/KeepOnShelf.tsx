import { judgeWords, shelfTroubleSentences, shelfWords } from '@truesweep/wording';
import { useState } from 'preact/hooks';
import { ShelfFields, type ShelfWords } from './ShelfFields.js';
import type { ShelfSensor } from './shelf.js';
import type { ShelfTrouble } from './shelfStore.js';

/** Keeps what was entered as a sensor on the shelf, with a name and what it is told by. */
export function KeepOnShelf(props: {
  /** What was entered, by the names of the entries. */
  readonly texts: Readonly<Record<string, string>>;
  readonly onKept: (sensor: ShelfSensor) => void;
}) {
  const [words, setWords] = useState<ShelfWords>({
    name: props.texts.jobTitle ?? '',
    serial: '',
    machine: '',
    note: '',
  });
  const [trouble, setTrouble] = useState<ShelfTrouble>();
  const [isKept, setKept] = useState(false);
  const keep = async () => {
    const { changeSensor } = await import('./shelfStore.js');
    const sensor: ShelfSensor = {
      id: crypto.randomUUID(),
      ...words,
      name: words.name.trim() || shelfWords.unnamed,
      changedAt: new Date().toISOString(),
      texts: props.texts,
      results: [],
    };
    const tried = await changeSensor(sensor.id, () => sensor);
    setTrouble('trouble' in tried ? tried.trouble : undefined);
    setKept('value' in tried);
    if ('value' in tried) props.onKept(tried.value);
  };
  return (
    <details class="keep-on-shelf">
      <summary>{judgeWords.keep}</summary>
      <ShelfFields words={words} onWords={setWords} />
      <p class="keep">
        <button type="button" onClick={keep}>
          {judgeWords.keep}
        </button>
      </p>
      <p role="status">{isKept && judgeWords.keptNow}</p>
      {trouble && <p class="refusal">{shelfTroubleSentences[trouble]}</p>}
    </details>
  );
}
