import { formWords } from '@truesweep/wording';
import type { ComponentType } from 'preact';
import { useState } from 'preact/hooks';
import type { ShelfChoice } from './ShelfChoice.js';

/** Takes a sensor's parts from the shelf into a form; the shelf is opened when it is asked for. */
export function FromShelf(props: {
  readonly onTexts: (texts: Readonly<Record<string, string>>) => void;
}) {
  const [Choice, setChoice] = useState<ComponentType<Parameters<typeof ShelfChoice>[0]>>();
  const [chosen, setChosen] = useState<string>();
  const open = async () => {
    const loaded = await import('./ShelfChoice.js');
    setChoice(() => loaded.ShelfChoice);
  };
  if (!Choice)
    return (
      <p class="keep">
        <button type="button" onClick={open}>
          {formWords.fromShelf}
        </button>
      </p>
    );
  return (
    <div class="keep">
      <Choice
        chosen={chosen}
        onSensor={(sensor) => {
          setChosen(sensor?.id);
          if (sensor) props.onTexts(sensor.texts);
        }}
      />
    </div>
  );
}
