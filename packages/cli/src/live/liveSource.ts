import type { Seconds } from '@truesweep/core';

/** What comes from a running recorder. */
export type LiveEvent =
  | {
      readonly kind: 'bytes';
      readonly bytes: Uint8Array;
      /** When they came, s, on a clock that runs on; left out where that means nothing. */
      readonly arrived?: Seconds;
    }
  /** It is gone: a plug was pulled. */
  | { readonly kind: 'lost' }
  /** A file that was begun anew, or another one of its name. */
  | { readonly kind: 'begun-anew' }
  /** It is there again. */
  | { readonly kind: 'back' }
  /** A port is tried at a rate, baud; or its lines are read at one. */
  | { readonly kind: 'trying' | 'rate'; readonly baud: number };

/** Where a recording comes from while it runs. It ends by itself, or where `stopped` is aborted. */
export type LiveSource = (stopped: AbortSignal) => AsyncGenerator<LiveEvent>;

/** The time of the machine, s, which runs on whatever its clock is set to. */
export function now(): Seconds {
  return performance.now() / 1000;
}
