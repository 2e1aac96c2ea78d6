import { read, text } from '../guard.js';

/**
 * Refuses plain data of which a field can't be read because its getter throws. For doors that check by other means than {@link checkFields},
 * once these threw what is no refusal.
 *
 * @param value Groups and lists of any depth.
 * @param path What it is called in refusals.
 * @throws InputError `unreadable` with the path of the field and, as its `cause`, what the getter threw.
 *
 * @example
 * let told;
 * try {
 *   checkReadable({ list: [{ get track() { throw new Error('no power'); } }] }, 'it');
 * } catch (error) {
 *   told = error.message;
 * }
 * told // => 'it.list[0].track could not be read (no power); it must be a plain value.'
 */
export function checkReadable(value: unknown, path: string): void {
  // A list that grows as it is gone through, not recursion: data nested deeper than the stack are data too.
  const waiting = [{ value, path: text(path, 'path') }];
  const seen = new Set<unknown>();
  for (const { value: held, path: at } of waiting) {
    if (typeof held !== 'object' || held === null || ArrayBuffer.isView(held)) continue;
    if (seen.has(held)) continue;
    seen.add(held);
    for (const name of Object.keys(held)) {
      const isPlace = Array.isArray(held);
      const part = read(held, isPlace ? Number(name) : name, at);
      waiting.push({ value: part, path: isPlace ? `${at}[${name}]` : `${at}.${name}` });
    }
  }
}
