import { InputError } from './errors.js';

/**
 * Refuses work beyond a stated limit, before it is begun.
 *
 * @throws InputError `too-much-work`, at the path of the field that asks for it.
 */
export function noMoreThan(limit: number, count: number, path: string, what: string): void {
  if (count <= limit) return;
  throw new InputError(
    'too-much-work',
    path,
    `${path} asks for ${count.toExponential(1).replace('-', '−')} ${what}; at most ${limit.toLocaleString('en')} are worked out.`,
  );
}
