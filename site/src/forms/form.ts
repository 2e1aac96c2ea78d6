import { InputError } from '@truesweep/core';
import { type ChoiceEntry, type Entry, type OwnEntry, readEntry, type TextEntry } from './entry.js';

/** The entries of a form by their names. */
export type Entries = Readonly<Record<string, Entry>>;

/** The name of an entry. */
export type NameIn<Given extends Entries> = keyof Given & string;

/** What stands in a form, as it was typed. */
export type Texts<Given extends Entries> = Readonly<Record<NameIn<Given>, string>>;

/** What was entered, in SI units; undefined where an optional entry is left empty. */
export type Values<Given extends Entries> = {
  readonly [Name in keyof Given]: Given[Name] extends TextEntry
    ? string
    : Given[Name] extends ChoiceEntry
      ? keyof Given[Name]['choices']
      :
          | (Given[Name] extends OwnEntry<infer Value> ? Value : number)
          | (Given[Name] extends { readonly optional: true } ? undefined : never);
};

/** Why entries can't be used, by their names. */
export type Refusals<Given extends Entries> = Readonly<Partial<Record<NameIn<Given>, string>>>;

/** Entries that stand together under a title. */
export interface EntryGroup<Name extends string> {
  readonly title: string;
  readonly names: readonly Name[];
  /** Whether it is folded away at first: what most leave as it is. */
  readonly folded?: true;
  /** How many entries stand side by side, as in the rows of a table whose heading the title is; one when left out. */
  readonly across?: 2 | 3;
}

/** A form: its entries in groups, and what each is called and means. */
export interface Form<Given extends Entries> {
  readonly groups: readonly EntryGroup<NameIn<Given>>[];
  readonly entries: Given & Readonly<Record<NameIn<Given>, Entry>>;
  /** What is read off one's own sensor or its manual, never a common value: while the first text stands there, the answer says that it is an example's. */
  readonly readings?: readonly NameIn<Given>[];
  readonly labels: Texts<Given>;
  readonly hints: Texts<Given>;
  /** Refuses, beside their fields, values that are each possible and don't go together; nothing when left out. */
  readonly check?: (values: Values<Given>) => Refusals<Given>;
}

/** The names of a form's entries, as they stand on the page. */
export function namesOf<Given extends Entries>(form: Form<Given>): readonly NameIn<Given>[] {
  return form.groups.flatMap(({ names }) => names);
}

/** What stands in a form first. */
export function initialTexts<Given extends Entries>(form: Form<Given>): Texts<Given> {
  return Object.fromEntries(
    namesOf(form).map((name) => [name, form.entries[name].initial]),
  ) as Texts<Given>;
}

/** Reads a form into its values, or into the refusals of all entries that can't be used. */
export function readForm<Given extends Entries>(
  form: Form<Given>,
  texts: Texts<Given>,
): { readonly values: Values<Given> } | { readonly refusals: Refusals<Given> } {
  const values: Record<string, unknown> = {};
  let refusals: Readonly<Record<string, string>> = {};
  for (const name of namesOf(form)) {
    try {
      values[name] = readEntry(name, form.labels[name], form.entries[name], texts[name]);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      refusals = { ...refusals, [name]: error.message };
    }
  }
  if (form.check && Object.keys(refusals).length === 0)
    refusals = form.check(values as Values<Given>) as Readonly<Record<string, string>>;
  return Object.keys(refusals).length > 0
    ? { refusals: refusals as Refusals<Given> }
    : { values: values as Values<Given> };
}
