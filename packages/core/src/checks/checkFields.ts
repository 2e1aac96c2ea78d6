import { checkFields as checkByRules, type FieldRules } from '../fields.js';
import { text } from '../guard.js';
import { checkRule } from './checkRule.js';

/**
 * Refuses anything but a group of fields that follow their rules; an unknown field is refused with the nearest known name, before what a
 * mistyped one leaves missing.
 *
 * @param value The group, as it was handed in.
 * @param path What it is called in refusals, such as `circuit.sensor`.
 * @param rules A rule for each field.
 * @throws InputError `missing`, `not-a-group`, `unknown-field`, `unreadable`, and what the rules refuse, with the path of the field.
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
  text(path, 'path');
  checkRule(rules, 'rules');
  checkByRules(value, path, rules);
}
