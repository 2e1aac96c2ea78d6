/** What all keys of Redis begin with. */
export const keyPrefix = 'truesweep';

/** The queue where none is named. */
export const usualQueue = 'recordings';

/** The hash that holds the jobs of a queue by their ids. */
export function definitionsKey(queue: string): string {
  return `${keyPrefix}:${queue}:definitions`;
}
