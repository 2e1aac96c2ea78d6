import type { Verdict } from '@truesweep/core';

/** So much of a title stands in a file's name. */
const longestTitle = 48;

/** A file's name that says what it is: the day, the job and the verdict, in letters that every system takes. */
export function fileName(title: string, verdict: Verdict, at: string | undefined): string {
  const plain = title
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .slice(0, longestTitle)
    .replace(/^-+|-+$/g, '')
    .toLowerCase();
  const day = /^\d{4}-\d\d-\d\d/.exec(at ?? '')?.[0];
  return [day, plain, verdict].filter((part) => part).join('-');
}
