import { InputError } from '@truesweep/core';

/** Refuses what is no finite number. */
export function someNumber(value: unknown, path: string): void {
  if (Number.isFinite(value)) return;
  const code = value === undefined ? 'missing' : 'not-finite';
  throw new InputError(code, path, `${path} is none; it must be a finite number.`);
}
