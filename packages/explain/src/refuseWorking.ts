import { InputError } from '@truesweep/core';

/** Refuses what no working is written for. */
export function refuseWorking(path: string, why: string): never {
  throw new InputError(
    'no-working',
    path,
    `${path} ${why}; no working is written for that. The library gives the result without one.`,
  );
}
