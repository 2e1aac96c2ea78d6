import { InputError } from './errors.js';
import { clipped, oneOf, read, refuse } from './guard.js';
import { nearestName } from './nearestName.js';

/** What a field must be: a check that throws, the words that it may be, or the rules of its own fields. */
export type FieldRule = ((value: unknown, path: string) => void) | readonly string[] | FieldRules;

/** The rules of a group's fields by name; a name that ends in ? may be left out. */
export interface FieldRules {
  readonly [field: string]: FieldRule;
}

/**
 * Refuses anything but a group of fields that follow their rules; an unknown field with the nearest known name, before what a mistyped one
 * leaves missing.
 */
export function checkFields(value: unknown, path: string, rules: FieldRules): void {
  const { known, fields } = tables.get(rules) ?? tableOf(rules);
  if (!isGroup(value)) refuse(value, path, `an object { ${known.join(', ')} }`, 'not-a-group');
  for (const name in value) if (!known.includes(name)) refuseUnknown(name, path, known);
  for (const { field, optional, rule } of fields) {
    const part = read(value, field, path);
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
  const kind = isGroup(value)
    ? oneOf(read(value, 'kind', path), Object.keys(kinds), `${path}.kind`)
    : '';
  checkFields(value, path, { kind: () => {}, ...kinds[kind] });
}

/** Refuses a field that does not follow its rule. */
export function checkField(value: unknown, path: string, rule: FieldRule): void {
  if (typeof rule === 'function') rule(value, path);
  else if (Array.isArray(rule)) oneOf(value, rule, path);
  else checkFields(value, path, rule as FieldRules);
}

/** A rule of {@link checkFields} for lists of so many entries that all follow one rule. */
export function listOf(
  rule: FieldRule,
  least = 0,
  most = 1e5,
): (value: unknown, path: string) => void {
  return (value, path) => {
    if (!Array.isArray(value)) refuse(value, path, 'a list', 'not-a-list');
    if (value.length < least || value.length > most) {
      throw new InputError(
        'out-of-range',
        path,
        `${path} has ${value.length} entries; it must have ${least} to ${most}.`,
      );
    }
    // Not `forEach`, which passes over holes.
    for (let i = 0; i < value.length; i++) checkField(read(value, i, path), `${path}[${i}]`, rule);
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
