import { type FieldRule, listOf } from '../fields.js';
import { read, refuse, text } from '../guard.js';

/** Refuses what is no rule of fields; what a function does nobody can tell beforehand. */
export function checkRule(rule: unknown, path: string): asserts rule is FieldRule {
  if (typeof rule === 'function') return;
  if (Array.isArray(rule)) return listOf(text)(rule, path);
  if (typeof rule !== 'object' || rule === null)
    refuse(
      rule,
      path,
      'a check, a list of words, or the rules of the fields, by name',
      'not-a-group',
    );
  for (const name of Object.keys(rule)) checkRule(read(rule, name, path), `${path}.${name}`);
}
