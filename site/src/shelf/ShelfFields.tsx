import { shelfFieldHints, shelfFieldLabels } from '@truesweep/wording';
import { useId } from 'preact/hooks';
import type { ShelfSensor } from './shelf.js';

/** What a sensor is told by. */
export type ShelfWords = Pick<ShelfSensor, 'name' | 'serial' | 'machine' | 'note'>;

const names = Object.keys(shelfFieldLabels) as readonly (keyof ShelfWords)[];
/** No name or note is longer. */
const longest = 400;

/** The fields by which a sensor on the shelf is told. */
export function ShelfFields(props: {
  readonly words: ShelfWords;
  readonly onWords: (words: ShelfWords) => void;
}) {
  const { words, onWords } = props;
  const id = useId();
  return (
    <>
      {names.map((name) => (
        <div key={name} class="entry text">
          <label for={`${id}-${name}`}>{shelfFieldLabels[name]}</label>
          <input
            id={`${id}-${name}`}
            value={words[name]}
            maxLength={longest}
            autocomplete="off"
            aria-describedby={`${id}-${name}-hint`}
            onInput={(event) => onWords({ ...words, [name]: event.currentTarget.value })}
          />
          <p class="hint" id={`${id}-${name}-hint`}>
            {shelfFieldHints[name]}
          </p>
        </div>
      ))}
    </>
  );
}
