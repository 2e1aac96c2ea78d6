import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { EntryField } from './EntryField.js';
import type { Entries, Form, NameIn, Refusals, Texts } from './form.js';

/** The entries of a form in their groups; one with a refusal in it is never folded away. */
export function EntryFields<Given extends Entries>(props: {
  readonly form: Form<Given>;
  readonly texts: Texts<Given>;
  readonly refusals: Refusals<Given>;
  readonly onText: (name: NameIn<Given>, text: string) => void;
}) {
  const { form, texts, refusals, onText } = props;
  return (
    <form onSubmit={(event) => event.preventDefault()}>
      {form.groups.map(({ title, names, folded, across }) => {
        const fields = names.map((name) => (
          <EntryField
            key={name}
            name={name}
            label={form.labels[name]}
            hint={form.hints[name]}
            entry={form.entries[name]}
            text={texts[name]}
            refusal={refusals[name]}
            isInRow={across !== undefined}
            onText={(text) => onText(name, text)}
          />
        ));
        // What the columns mean stands once below them; beside each field it is for who listens.
        const placed = across ? (
          <>
            <div class={`across across-${across}`}>{fields}</div>
            <p class="hint" aria-hidden="true">
              {[...new Set(names.map((name) => form.hints[name]))].join(' ')}
            </p>
          </>
        ) : (
          fields
        );
        return folded ? (
          <FoldedGroup key={title} title={title} isRefused={names.some((name) => name in refusals)}>
            {placed}
          </FoldedGroup>
        ) : (
          <fieldset key={title}>
            <legend>{title}</legend>
            {placed}
          </fieldset>
        );
      })}
    </form>
  );
}

/** Unfolds itself for a refusal, and stays so when that is mended: the hand is still in it. */
function FoldedGroup(props: {
  readonly title: string;
  readonly isRefused: boolean;
  readonly children: ComponentChildren;
}) {
  const { title, isRefused, children } = props;
  const isOpen = useRef(false);
  isOpen.current ||= isRefused;
  return (
    <details
      open={isOpen.current}
      onToggle={(event) => {
        isOpen.current = event.currentTarget.open;
      }}
    >
      <summary>{title}</summary>
      {children}
    </details>
  );
}
