import { text } from '../guard.js';

/**
 * A rule of {@link checkFields}: refuses anything but a text.
 *
 * @throws InputError `missing` or `not-a-text`.
 *
 * @example
 * checkFields({ name: 'port' }, 'it', { name: checkText }) // => undefined
 */
export function checkText(value: unknown, path: string): asserts value is string {
  text(value, text(path, 'path'));
}
