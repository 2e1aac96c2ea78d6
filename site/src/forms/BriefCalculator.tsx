import { exampleSentence, formWords } from '@truesweep/wording';
import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { FromShelf } from '../shelf/FromShelf.js';
import { Answer } from './Answer.js';
import type { ShownResult } from './Calculator.js';
import { EntryFields } from './EntryFields.js';
import type { Entries, Form, NameIn, Refusals, Texts } from './form.js';
import { KeepEntries } from './KeepEntries.js';

/** So many sentences of the answer are read at once. */
const atOnce = 2;

/** A calculator as a step of the guided way: a picture, the few entries that are asked for, the answer's first sentences; all else is folded away. */
export function BriefCalculator<Given extends Entries>(props: {
  readonly form: Form<Given>;
  readonly asks: readonly string[];
  readonly texts: Texts<Given>;
  readonly refusals: Refusals<Given>;
  readonly result: ShownResult;
  readonly isPending: boolean;
  /** Labels of entries that still stand as in the example. */
  readonly unread: readonly string[];
  readonly onText: (name: NameIn<Given>, text: string) => void;
  /** Takes texts by their names; left out where the form has no parts of a sensor. */
  readonly onTake?: ((texts: Readonly<Record<string, string>>) => void) | undefined;
  readonly onAgain: () => void;
  /** The working of the result, folded away. */
  readonly working?: ComponentChildren;
}) {
  const { form, asks, texts, refusals, result, isPending, unread, onText, onTake, onAgain } = props;
  const isAsked = (name: string) => asks.includes(name);
  const unfolded = groupsOf(form, isAsked).map(({ title, names }) => ({ title, names }));
  const asked = { ...form, groups: unfolded };
  const others = { ...form, groups: groupsOf(form, (name) => !isAsked(name)) };
  const isOpen = useRef(false);
  isOpen.current ||= Object.keys(refusals).some((name) => !isAsked(name));
  const [first, more] = [result.sentences.slice(0, atOnce), result.sentences.slice(atOnce)];
  return (
    <div class="readings brief not-content" aria-busy={isPending}>
      {result.picture && <div class="picture">{result.picture}</div>}
      {asks.length > 0 && (
        <EntryFields form={asked} texts={texts} refusals={refusals} onText={onText} />
      )}
      <Answer sentences={first} />
      {result.table}
      {unread.length > 0 && <p class="example">{exampleSentence(unread)}</p>}
      {result.caution !== undefined && <p class="caution">{result.caution}</p>}
      <details
        open={isOpen.current}
        onToggle={(event) => {
          isOpen.current = event.currentTarget.open;
        }}
      >
        <summary>{formWords.others}</summary>
        <EntryFields form={others} texts={texts} refusals={refusals} onText={onText} />
        {onTake && <FromShelf onTexts={onTake} />}
        <KeepEntries link={undefined} onAgain={onAgain} />
      </details>
      {(more.length > 0 || result.drawing || result.below) && (
        <details class="closer">
          <summary>{formWords.closer}</summary>
          {more.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          {result.drawing}
          {result.below}
          {props.working}
        </details>
      )}
    </div>
  );
}

/** The groups of a form with some of its entries; those without any are left out. */
function groupsOf<Given extends Entries>(form: Form<Given>, has: (name: string) => boolean) {
  return form.groups
    .map((group) => ({ ...group, names: group.names.filter(has) }))
    .filter(({ names }) => names.length > 0);
}
