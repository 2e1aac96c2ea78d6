import { exampleSentence } from '@truesweep/wording';
import type { ComponentChildren } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import { NewerVersion } from '../offline/NewerVersion.js';
import { FromShelf } from '../shelf/FromShelf.js';
import { ShowWorking } from '../workings/ShowWorking.js';
import { Answer } from './Answer.js';
import { AsItCame } from './AsItCame.js';
import { inAddress } from './address.js';
import { Below } from './Below.js';
import { BriefCalculator } from './BriefCalculator.js';
import { EntryFields } from './EntryFields.js';
import { type Entries, type Form, namesOf, type Texts } from './form.js';
import { KeepEntries } from './KeepEntries.js';
import type { Keeping } from './keeping.js';
import { useEntries } from './useEntries.js';
import { type Showing, useResult } from './useResult.js';

/** What a calculator shows of a result. */
export interface ShownResult {
  /** The answer in plain sentences, the first one first. */
  readonly sentences: readonly string[];
  /** What is to be minded with these very entries. */
  readonly caution?: string | undefined;
  /** The drawing beside the form. */
  readonly drawing?: ComponentChildren;
  /** What a step of the guided way shows first. */
  readonly picture?: ComponentChildren;
  /** A table that belongs to the answer. */
  readonly table?: ComponentChildren;
  /** Tables and diagrams below. */
  readonly below?: ComponentChildren;
  /** Rows of the bench sheet: what is read, and what is expected there; blank ones where left out. */
  readonly sheet?: readonly (readonly [string, string])[];
}

/** Where a calculator keeps its entries; the page's address when left out. */
export interface CalculatorProps {
  readonly keeping?: Keeping | undefined;
  /** The few entries that a step of the guided way asks for; all others and the tables are folded away. All are asked for when left out. */
  readonly asks?: readonly string[] | undefined;
}

/** A form and, of what stands in it, the answer: in words first, in numbers and drawings below. */
export function Calculator<Given extends Entries>(
  props: CalculatorProps & Showing<Given> & { readonly form: Form<Given> },
) {
  const { form } = props;
  const keeping = useMemo(() => props.keeping ?? inAddress(namesOf(form)), [props.keeping, form]);
  const { texts, settled, notice, link, setText, take, startAgain } = useEntries(form, keeping);
  const { result, refusals, values, isPending } = useResult(form, settled, props, !props.keeping);
  const unread = unreadOf(form, texts);
  // Its place is kept while the entries give nothing to draw.
  const isDrawn = useRef(false);
  isDrawn.current ||= result?.drawing !== undefined;
  // Without a result the form stands as it stood.
  const isAlone = useRef(false);
  if (result) isAlone.current = !isDrawn.current;
  if (props.asks)
    return (
      <BriefCalculator
        form={form}
        asks={props.asks}
        texts={texts}
        refusals={refusals}
        result={result ?? nothingYet}
        isPending={isPending}
        unread={unread}
        onText={setText}
        onTake={hasParts(form) ? take : undefined}
        onAgain={startAgain}
        working={props.workings && <ShowWorking of={props.workings} values={values} />}
      />
    );
  return (
    <div class="readings not-content" aria-busy={isPending}>
      {!props.keeping && <NewerVersion />}
      {notice !== undefined && <p class="notice">{notice}</p>}
      <Answer sentences={result?.sentences} />
      {result?.table}
      {unread.length > 0 && <p class="example">{exampleSentence(unread)}</p>}
      {result ? (
        <div key="minded" class="minded">
          {result.caution !== undefined && <p class="caution">{result.caution}</p>}
        </div>
      ) : (
        <AsItCame key="minded-came" class="minded" />
      )}
      <div class={isAlone.current ? 'beside alone' : 'beside'}>
        <EntryFields form={form} texts={texts} refusals={refusals} onText={setText} />
        {result ? (
          <div key="own" class="drawn">
            {result.drawing}
          </div>
        ) : (
          <AsItCame key="came" class="drawn" />
        )}
      </div>
      <Below result={result} />
      {props.workings && <ShowWorking of={props.workings} values={values} />}
      {hasParts(form) && <FromShelf onTexts={take} />}
      <KeepEntries link={link} onAgain={startAgain} />
    </div>
  );
}

/** What still stands as in the example: labels of entries, and of a table's rows its title. */
function unreadOf<Given extends Entries>(
  form: Form<Given>,
  texts: Texts<Given>,
): readonly string[] {
  const unread = (form.readings ?? []).filter(
    (name) => form.entries[name].initial !== '' && texts[name] === form.entries[name].initial,
  );
  const labels = unread.map(
    (name) =>
      form.groups.find(({ names, across }) => across && names.includes(name))?.title ??
      form.labels[name],
  );
  return [...new Set(labels)];
}

/** Whether a form asks for parts that a sensor on the shelf has. */
function hasParts({ entries }: { readonly entries: Entries }): boolean {
  return 'track' in entries;
}

/** Before a worker's first answer. */
const nothingYet: ShownResult = { sentences: [] };
