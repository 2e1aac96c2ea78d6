import { formatQuantity, InputError, parseQuantity, type QuantityUnit } from '@truesweep/core';
import { outOfBoundsSentence } from '@truesweep/wording';

/** How an entry is read: its unit, its bounds in it, and what stands there first. */
export interface Entry {
  readonly unit: QuantityUnit;
  readonly low: number;
  readonly high: number;
  readonly initial: string;
  /** Whether it may be left empty. */
  readonly optional?: boolean;
}

/** Why an entry can't be used, by its name. */
export type RefusalsOf<Name extends string> = Readonly<Partial<Record<Name, string>>>;

/** What stands in a form first. */
export function initialTextsOf<Name extends string>(
  names: readonly Name[],
  entries: Readonly<Record<Name, Entry>>,
): Readonly<Record<Name, string>> {
  return Object.fromEntries(names.map((name) => [name, entries[name].initial])) as Record<
    Name,
    string
  >;
}

/** The lowest and the highest value of an entry, written with their unit. */
export function boundsOfEntry({ unit, low, high }: Entry): readonly [low: string, high: string] {
  const written = (value: number) => formatQuantity(value, unit, { trim: true });
  return [written(low), written(high)];
}

/** Reads one entry; undefined where an optional one is left empty. */
function readEntry(name: string, label: string, entry: Entry, text: string): number | undefined {
  const { unit, low, high, optional } = entry;
  if (optional && text.trim() === '') return undefined;
  const value = parseQuantity(text, unit, label);
  if (value >= low && value <= high) return value;
  throw new InputError(
    'out-of-range',
    name,
    outOfBoundsSentence(text.trim(), ...boundsOfEntry(entry)),
  );
}

/** Reads entries into their values in SI units, and the refusals of those that can't be used. */
export function readEntries<Name extends string>(
  names: readonly Name[],
  entries: Readonly<Record<Name, Entry>>,
  labels: Readonly<Record<Name, string>>,
  texts: Readonly<Record<Name, string>>,
): { readonly values: Partial<Record<Name, number>>; readonly refusals: RefusalsOf<Name> } {
  const values: Partial<Record<Name, number>> = {};
  const refusals: Partial<Record<Name, string>> = {};
  for (const name of names) {
    try {
      const value = readEntry(name, labels[name], entries[name], texts[name]);
      if (value !== undefined) values[name] = value;
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      refusals[name] = error.message;
    }
  }
  return { values, refusals };
}
