import { judgeWords, shelfTroubleSentences, shelfWords } from '@truesweep/wording';
import { useEffect, useState } from 'preact/hooks';
import type { ShelfSensor } from './shelf.js';
import type { ShelfContent, ShelfTrouble } from './shelfStore.js';

/** Chooses a sensor from the shelf; what was entered of it is taken. */
export function ShelfChoice(props: {
  readonly chosen: string | undefined;
  readonly onSensor: (sensor: ShelfSensor | undefined) => void;
}) {
  const { chosen, onSensor } = props;
  const [content, setContent] = useState<ShelfContent>();
  const [trouble, setTrouble] = useState<ShelfTrouble>();
  useEffect(() => {
    let stop = () => {};
    let isOver = false;
    void import('./shelfStore.js').then(({ followShelf, readAll }) => {
      const read = async () => {
        const tried = await readAll();
        if ('value' in tried) setContent(tried.value);
        setTrouble('trouble' in tried ? tried.trouble : undefined);
      };
      if (isOver) return;
      stop = followShelf(read);
      void read();
    });
    return () => {
      isOver = true;
      stop();
    };
  }, []);
  const sensors = content?.sensors ?? [];
  return (
    <div class="shelf-choice">
      <label for="shelf-sensor">{judgeWords.fromShelf}</label>
      <select
        id="shelf-sensor"
        disabled={sensors.length === 0}
        onChange={(event) => {
          const { value } = event.currentTarget;
          onSensor(sensors.find(({ id }) => id === value));
        }}
      >
        <option value="" selected={chosen === undefined}>
          {sensors.length === 0 ? shelfWords.empty : judgeWords.entered}
        </option>
        {sensors.map(({ id, name, serial }) => (
          <option key={id} value={id} selected={id === chosen}>
            {serial === '' ? name : `${name} (${serial})`}
          </option>
        ))}
      </select>
      {trouble && <p class="refusal">{shelfTroubleSentences[trouble]}</p>}
    </div>
  );
}
