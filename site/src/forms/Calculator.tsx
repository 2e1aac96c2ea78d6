import { InputError } from '@truesweep/core';
import { exampleSentence, mendEntriesSentence, noAnswerSentence } from '@truesweep/wording';
import type { ComponentChildren } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import { NewerVersion } from '../offline/NewerVersion.js';
import { FromShelf } from '../shelf/FromShelf.js';
import { Answer } from './Answer.js';
import { inAddress } from './address.js';
import { BenchSheet } from './BenchSheet.js';
import { BriefCalculator } from './BriefCalculator.js';
import { EntryFields } from './EntryFields.js';
import { type Entries, type Form, namesOf, type Refusals, readForm, type Values } from './form.js';
import { KeepEntries } from './KeepEntries.js';
import type { Keeping } from './keeping.js';
import { useEntries } from './useEntries.js';

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
  /** Rows of the bench sheet: what is read, and what is expected there. */
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
  props: CalculatorProps & {
    readonly form: Form<Given>;
    readonly show: (values: Values<Given>) => ShownResult;
  },
) {
  const { form, show } = props;
  const keeping = useMemo(() => props.keeping ?? inAddress(namesOf(form)), [props.keeping, form]);
  const { texts, settled, notice, link, setText, take, startAgain } = useEntries(form, keeping);
  const { result, refusals } = useMemo(() => resultOf(form, settled, show), [form, settled, show]);
  const unread = (form.readings ?? [])
    .filter(
      (name) => form.entries[name].initial !== '' && texts[name] === form.entries[name].initial,
    )
    .map((name) => form.labels[name]);
  // Its place is kept while the entries give nothing to draw.
  const isDrawn = useRef(false);
  isDrawn.current ||= result.drawing !== undefined;
  if (props.asks)
    return (
      <BriefCalculator
        form={form}
        asks={props.asks}
        texts={texts}
        refusals={refusals ?? noRefusals}
        result={result}
        unread={unread}
        onText={setText}
        onTake={hasParts(form) ? take : undefined}
        onAgain={startAgain}
      />
    );
  return (
    <div class="readings not-content">
      {!props.keeping && <NewerVersion />}
      {notice !== undefined && <p class="notice">{notice}</p>}
      <Answer sentences={result.sentences} />
      {result.table}
      {unread.length > 0 && <p class="example">{exampleSentence(unread)}</p>}
      {result.caution !== undefined && <p class="caution">{result.caution}</p>}
      <div class={isDrawn.current ? 'beside' : undefined}>
        <EntryFields form={form} texts={texts} refusals={refusals ?? noRefusals} onText={setText} />
        {result.drawing}
      </div>
      {result.below}
      {result.sheet && <BenchSheet rows={result.sheet} />}
      {hasParts(form) && <FromShelf onTexts={take} />}
      <KeepEntries link={link} onAgain={startAgain} />
    </div>
  );
}

/** Whether a form asks for parts that a sensor on the shelf has. */
function hasParts({ entries }: { readonly entries: Entries }): boolean {
  return 'track' in entries;
}

const noRefusals = Object.freeze({});

function resultOf<Given extends Entries>(
  form: Form<Given>,
  texts: Parameters<typeof readForm<Given>>[1],
  show: (values: Values<Given>) => ShownResult,
): { readonly result: ShownResult; readonly refusals?: Refusals<Given> } {
  const read = readForm(form, texts);
  if ('refusals' in read) {
    const wrong = namesOf(form).filter((name) => name in read.refusals);
    const sentence = mendEntriesSentence(wrong.map((name) => form.labels[name]));
    return { result: { sentences: [sentence] }, refusals: read.refusals };
  }
  try {
    return { result: show(read.values) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { result: { sentences: [noAnswerSentence(error.message)] } };
  }
}
