import { boundsWords } from '@truesweep/wording';
import { boundsOf, type Entry } from './entry.js';

/** One entry of a form: what it is, what it means, its bounds, and beside it why it can't be used. */
export function EntryField(props: {
  readonly name: string;
  readonly label: string;
  readonly hint: string;
  readonly entry: Entry;
  readonly text: string;
  readonly refusal: string | undefined;
  /** Whether it is one of several in a row. */
  readonly isInRow?: boolean;
  readonly onText: (text: string) => void;
}) {
  const { name, label, hint, entry, text, refusal, isInRow, onText } = props;
  return (
    <div class={entry.unit === 'text' || entry.unit === 'choice' ? 'entry text' : 'entry'}>
      <label for={`entry-${name}`}>{label}</label>
      {entry.unit === 'choice' ? (
        <select
          id={`entry-${name}`}
          name={name}
          aria-describedby={`hint-${name}`}
          onChange={(event) => onText(event.currentTarget.value)}
        >
          {Object.entries(entry.choices).map(([value, words]) => (
            <option key={value} value={value} selected={value === text}>
              {words}
            </option>
          ))}
        </select>
      ) : (
        <input
          id={`entry-${name}`}
          name={name}
          value={text}
          placeholder={entry.unit === 'text' ? undefined : entry.example}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          aria-invalid={refusal !== undefined}
          aria-describedby={`hint-${name}${refusal === undefined ? '' : ` refusal-${name}`}`}
          onInput={(event) => onText(event.currentTarget.value)}
        />
      )}
      {refusal !== undefined && (
        <p class="refusal" id={`refusal-${name}`}>
          {refusal}
        </p>
      )}
      <p class={isInRow ? 'hint sr-only' : 'hint'} id={`hint-${name}`}>
        {hint}{' '}
        {entry.unit !== 'text' && entry.unit !== 'choice' && (
          <span class="bounds">{boundsWords(...boundsOf(entry))}</span>
        )}
      </p>
    </div>
  );
}
