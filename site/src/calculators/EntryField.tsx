import { boundsWords, entryHints, entryLabels, type HookUpEntry } from '@truesweep/wording';
import { boundsOf } from './hookUp.js';

/** One entry of the form: what it is, what it means, its bounds, and beside it why it can't be used. */
export function EntryField(props: {
  readonly name: HookUpEntry;
  readonly text: string;
  readonly refusal: string | undefined;
  readonly onText: (text: string) => void;
}) {
  const { name, text, refusal, onText } = props;
  return (
    <div class="entry">
      <label for={`entry-${name}`}>{entryLabels[name]}</label>
      <input
        id={`entry-${name}`}
        name={name}
        value={text}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        aria-invalid={refusal !== undefined}
        aria-describedby={`hint-${name}${refusal === undefined ? '' : ` refusal-${name}`}`}
        onInput={(event) => onText(event.currentTarget.value)}
      />
      {refusal !== undefined && (
        <p class="refusal" id={`refusal-${name}`}>
          {refusal}
        </p>
      )}
      <p class="hint" id={`hint-${name}`}>
        {entryHints[name]} <span class="bounds">{boundsWords(...boundsOf(name))}</span>
      </p>
    </div>
  );
}
