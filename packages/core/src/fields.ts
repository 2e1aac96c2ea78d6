import { InputError } from './errors.js';
import { clipped, oneOf, refuse, text } from './guard.js';
import { nearestName } from './nearestName.js';

/** What a field must be: a check that throws, the words that it may be, or the rules of its own fields. */
export type FieldRule = ((value: unknown, path: string) => void) | readonly string[] | FieldRules;

/** The rules of a group's fields by name; a name that ends in ? may be left out. */
export interface FieldRules {
  readonly [field: string]: FieldRule;
}

/**
 * Refuses anything but a group of fields that follow their rules; an unknown field is refused with the nearest known name, before what a
 * mistyped one leaves missing.
 *
 * @param value The group, as it was handed in.
 * @param path What it is called in refusals, such as `circuit.sensor`.
 * @param rules A rule for each field.
 * @throws InputError `missing`, `not-a-group`, `unknown-field`, and what the rules refuse, with the path of the field.
 *
 * @example
 * let told;
 * try {
 *   checkFields({ trak: 5000 }, 'sensor', { track: () => {}, 'contact?': () => {} });
 * } catch (error) {
 *   told = error.message;
 * }
 * told // => 'sensor.trak is not known; it may be meant to be “track”.'
 */
export function checkFields(value: unknown, path: string, rules: FieldRules): void {
  const { known, fields } = tables.get(rules) ?? tableOf(rules);
  text(path, 'path');
  if (!isGroup(value)) refuse(value, path, `an object { ${known.join(', ')} }`, 'not-a-group');
  for (const name in value) if (!known.includes(name)) refuseUnknown(name, path, known);
  for (const { field, optional, rule } of fields) {
    const part = value[field];
    if (part !== undefined || !optional) checkField(part, `${path}.${field}`, rule);
  }
}

/** A table of rules, taken apart. */
interface Table {
  readonly known: readonly string[];
  readonly fields: readonly {
    readonly field: string;
    readonly optional: boolean;
    readonly rule: FieldRule;
  }[];
}

/** Tables that were taken apart: a curve takes no longer than the check of its circuit would without. */
const tables = new WeakMap<FieldRules, Table>();

function tableOf(rules: FieldRules): Table {
  if (!isGroup(rules)) refuse(rules, 'rules', 'the rules of the fields, by name', 'not-a-group');
  const fields = Object.entries<FieldRule>(rules).map(([name, rule]) => ({
    field: name.replace('?', ''),
    optional: name.endsWith('?'),
    rule,
  }));
  const table = { known: fields.map(({ field }) => field), fields };
  tables.set(rules, table);
  return table;
}

/** Refuses a group whose field `kind` is none of those known, or whose other fields break the rules of its kind. */
export function checkKind(
  value: unknown,
  path: string,
  kinds: Readonly<Record<string, FieldRules>>,
): void {
  const kind = isGroup(value) ? oneOf(value.kind, Object.keys(kinds), `${path}.kind`) : '';
  checkFields(value, path, { kind: () => {}, ...kinds[kind] });
}

/** Refuses a field that does not follow its rule. */
export function checkField(value: unknown, path: string, rule: FieldRule): void {
  if (typeof rule === 'function') rule(value, path);
  else if (Array.isArray(rule)) oneOf(value, rule, path);
  else checkFields(value, path, rule as FieldRules);
}

/**
 * A rule of {@link checkFields} for lists of so many entries that all follow one rule.
 *
 * @param rule For each entry.
 * @param least How many there must be; none when left out.
 * @param most How many there may be; 100,000 when left out.
 * @returns A rule that throws InputError `missing`, `not-a-list`, `out-of-range`, or what the entries' rule throws.
 *
 * @example
 * let path;
 * try {
 *   checkFields({ pair: ['a', 'd'] }, 'it', { pair: listOf(['a', 'b'], 2, 2) });
 * } catch (error) {
 *   path = error.path;
 * }
 * path // => 'it.pair[1]'
 */
export function listOf(
  rule: FieldRule,
  least = 0,
  most = 1e5,
): (value: unknown, path: string) => void {
  return (value, path) => {
    text(path, 'path');
    if (!Array.isArray(value)) refuse(value, path, 'a list', 'not-a-list');
    if (typeof least !== 'number' || typeof most !== 'number') {
      refuse(least, 'least', 'a number, as most is', 'not-finite');
    }
    if (value.length < least || value.length > most) {
      throw new InputError(
        'out-of-range',
        path,
        `${path} has ${value.length} entries; it must have ${least} to ${most}.`,
      );
    }
    // Not `forEach`, which passes over holes.
    for (let i = 0; i < value.length; i++) checkField(value[i], `${path}[${i}]`, rule);
  };
}

function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function refuseUnknown(name: string, path: string, known: readonly string[]): never {
  const shown = clipped(name);
  const nearest = nearestName(shown, known);
  const right = nearest ? `it may be meant to be “${nearest}”` : `there are ${known.join(', ')}`;
  const at = `${path}.${shown}`;
  throw new InputError('unknown-field', at, `${at} is not known; ${right}.`);
}
