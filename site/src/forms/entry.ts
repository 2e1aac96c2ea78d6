import { formatQuantity, InputError, parseQuantity, type QuantityUnit } from '@truesweep/core';
import { notChoiceSentence, outOfBoundsSentence } from '@truesweep/wording';

/** How a quantity is read: its unit, its bounds in it, and what stands there first. */
export interface QuantityEntry {
  readonly unit: QuantityUnit;
  readonly low: number;
  readonly high: number;
  readonly initial: string;
  /** What could stand there, shown pale while it is empty; never a value. */
  readonly example?: string;
  /** Whether it may be left empty. */
  readonly optional?: true;
  /** Whether an ohmmeter's over-range, `OL` or `open`, is taken as an endless resistance. */
  readonly overRange?: true;
}

/** An entry that is taken as it is written. */
export interface TextEntry {
  readonly unit: 'text';
  readonly initial: string;
}

/** An entry that is one of a few; the first text is the usual one. */
export interface ChoiceEntry {
  readonly unit: 'choice';
  readonly initial: string;
  /** What can be chosen, and what each is called. */
  readonly choices: Readonly<Record<string, string>>;
}

/** An entry that brings how it is read, so that a page that has none carries no reader for it. */
export interface OwnEntry<Value = unknown> {
  readonly unit: 'own';
  readonly initial: string;
  /** What could stand there, shown pale while it is empty; never a value. */
  readonly example?: string;
  /** Whether it may be left empty. */
  readonly optional?: true;
  /** The lowest and the highest value, written with their unit; both are taken. */
  readonly bounds: readonly [low: string, high: string];
  /** Reads a text; refuses what is no such value, or lies outside the bounds, by an `InputError` at the field of that name. */
  readonly read: (text: string, name: string) => Value;
}

/** How an entry is read. */
export type Entry = QuantityEntry | TextEntry | ChoiceEntry | OwnEntry;

/** The lowest and the highest value of an entry, written with their unit. */
export function boundsOf(entry: QuantityEntry | OwnEntry): readonly [low: string, high: string] {
  if (entry.unit === 'own') return entry.bounds;
  const written = (value: number) => formatQuantity(value, entry.unit, { trim: true });
  return [written(entry.low), written(entry.high)];
}

/**
 * Reads one entry: a quantity in SI units, a text or a choice as it is, what an own one makes of its text; undefined where an optional one is left
 * empty.
 *
 * @throws InputError for what is no such quantity or lies outside the bounds.
 */
export function readEntry(name: string, label: string, entry: Entry, text: string): unknown {
  if (entry.unit === 'text') return text.trim();
  if (entry.unit === 'choice') {
    if (Object.hasOwn(entry.choices, text)) return text;
    const wrong = notChoiceSentence(text, Object.values(entry.choices));
    throw new InputError('not-one-of', name, wrong);
  }
  if (entry.optional && text.trim() === '') return undefined;
  if (entry.unit === 'own') return entry.read(text, name);
  const { unit, low, high, overRange } = entry;
  if (overRange && /^\s*(ol|open)\s*$/i.test(text)) return Number.POSITIVE_INFINITY;
  const value = parseQuantity(text, unit, label);
  if (value >= low && value <= high) return value;
  throw new InputError('out-of-range', name, outOfBoundsSentence(text.trim(), ...boundsOf(entry)));
}
